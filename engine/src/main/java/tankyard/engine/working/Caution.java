package tankyard.engine.working;

import java.util.Objects;

/**
 * A result that must be read with care: a law used outside its range, a value that was assumed.
 *
 * @param id short and stable, for example {@code viscosity-out-of-range}
 * @param words one sentence naming the value, the limit and the way out
 */
public record Caution(String id, String words) {
  public Caution {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(words, "words");
  }
}
