package tankyard.app.figures;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import tankyard.engine.working.Working;

/**
 * A number as it is shown.
 *
 * @param text digits without the unit; a dash where it is not known
 * @param working how it came about, written when somebody asks
 */
public record Figure(String text, Optional<Supplier<Working>> working) {
  private static final Figure UNKNOWN = new Figure("–", Optional.empty());

  public Figure {
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(working, "working");
  }

  public static Figure unknown() {
    return UNKNOWN;
  }

  public static Figure plain(String text) {
    return new Figure(text, Optional.empty());
  }
}
