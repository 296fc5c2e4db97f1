package tankyard.engine.catalog;

import java.util.Objects;
import java.util.Optional;
import tankyard.engine.working.Source;

/**
 * A fitting.
 *
 * @param material of the pipe it goes with; any if not said
 * @param nominal its size; any if not said, which is for working out losses and not for the store
 */
public record Fitting(
    String id,
    String name,
    Part part,
    Optional<Material> material,
    Optional<NominalSize> nominal,
    Loss loss,
    Source source)
    implements CatalogItem {

  /** What it is, whatever its size. */
  public enum Part {
    ELBOW_90,
    ELBOW_45,
    BEND,
    TEE,
    TEE_BRANCH,
    UNION,
    COUPLING,
    /** From poly, PVC or fibreglass to a steel thread. */
    TRANSITION,
    NIPPLE,
    SWAGE,
    PLUG,
    ENTRANCE,
    EXIT,
    STRAINER,
    OTHER
  }

  public Fitting {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(loss, "loss");
  }

  @Override
  public double order() {
    return nominal.map(NominalSize::inches).orElse(0.0);
  }
}
