package tankyard.engine.catalog;

import java.util.Objects;
import tankyard.engine.working.Source;

/** Everything else that is bought or done: gravel, a sign, a foot of trench, a day of the crew. */
public record Sundry(String id, String name, Nature nature, Source source) implements CatalogItem {

  /** Whether money buys a thing or somebody's time; sales tax is on things. */
  public enum Nature {
    GOODS,
    WORK
  }

  public Sundry {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(nature, "nature");
  }

  @Override
  public double order() {
    return 0;
  }
}
