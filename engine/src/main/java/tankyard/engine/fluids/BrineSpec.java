package tankyard.engine.fluids;

import java.util.Objects;
import tankyard.engine.units.Gravity;

/** Produced water, known by its gravity at 60 degF. */
public record BrineSpec(Gravity gravity) {
  public BrineSpec {
    Objects.requireNonNull(gravity, "gravity");
  }
}
