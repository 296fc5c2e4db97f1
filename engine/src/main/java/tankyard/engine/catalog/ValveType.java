package tankyard.engine.catalog;

import java.util.Objects;
import java.util.Optional;
import tankyard.engine.units.Cv;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.working.Source;

/**
 * A valve.
 *
 * @param nominal size of its ends; any if not said
 * @param cv wide open, if its maker gives one
 * @param port bore of the seat of a dump valve
 * @param lever of a dump valve: pull at the seat over pull at the float
 * @param loss of a hand or check valve wide open
 * @param rating what its body stands
 */
public record ValveType(
    String id,
    String name,
    Duty duty,
    Optional<NominalSize> nominal,
    Optional<Cv> cv,
    Optional<Length> port,
    Optional<Fraction> lever,
    Optional<Loss> loss,
    Optional<Pressure> rating,
    Source source)
    implements CatalogItem {

  /** What it is for. */
  public enum Duty {
    DUMP,
    CHECK,
    BALL,
    GATE,
    GLOBE,
    PLUG,
    RELIEF
  }

  public ValveType {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(duty, "duty");
  }

  @Override
  public double order() {
    return nominal.map(NominalSize::inches).orElse(0.0)
        + cv.map(c -> c.toGpmPerRootPsi() * 1e-6).orElse(0.0);
  }
}
