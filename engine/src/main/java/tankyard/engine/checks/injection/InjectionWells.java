package tankyard.engine.checks.injection;

import java.util.Optional;
import tankyard.engine.checks.Evidence;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.study.InjectionResult;

/** The well a pump's result is about. */
final class InjectionWells {
  private InjectionWells() {}

  static Optional<InjectionWell> of(Evidence evidence, InjectionResult injection) {
    return evidence.lease().injectionWells().stream()
        .filter(well -> well.id().equals(injection.wellId()))
        .findFirst();
  }
}
