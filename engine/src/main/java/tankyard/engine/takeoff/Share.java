package tankyard.engine.takeoff;

import java.util.List;

/**
 * The part of a takeoff line that one drawn thing, or two that meet, caused.
 *
 * @param causes ids; the first is the one it is charged to
 */
public record Share(List<String> causes, double quantity) {
  public Share {
    causes = List.copyOf(causes);
    if (causes.isEmpty()) {
      throw new IllegalArgumentException("Something drawn must have caused it");
    }
  }

  public String owner() {
    return causes.get(0);
  }
}
