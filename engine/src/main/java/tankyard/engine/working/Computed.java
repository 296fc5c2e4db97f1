package tankyard.engine.working;

import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import tankyard.engine.units.Quantity;

/**
 * A quantity that was worked out, its working and what must be said with it. The working is only
 * written when somebody asks for it: a study has thousands of numbers and a reader looks at ten.
 */
public final class Computed<Q extends Quantity> {
  private final Q value;
  private final Supplier<Working> working;
  private final List<Caution> cautions;

  private Computed(Q value, Supplier<Working> working, List<Caution> cautions) {
    this.value = Objects.requireNonNull(value, "value");
    this.working = Objects.requireNonNull(working, "working");
    this.cautions = List.copyOf(cautions);
  }

  public static <Q extends Quantity> Computed<Q> of(Q value, Supplier<Working> working) {
    return new Computed<>(value, working, List.of());
  }

  public Computed<Q> with(List<Caution> more) {
    return new Computed<>(value, working, more);
  }

  public Q value() {
    return value;
  }

  public Working working() {
    return working.get();
  }

  public List<Caution> cautions() {
    return cautions;
  }

  @Override
  public String toString() {
    return value.toString();
  }
}
