package tankyard.engine.study;

import java.util.List;

/** What is downstream of the separators in one case: it needs no gathering line to be solved. */
public record WaterWorks(
    StorageResult storage, List<OverflowResult> overflows, List<InjectionResult> injections) {
  public WaterWorks {
    overflows = List.copyOf(overflows);
    injections = List.copyOf(injections);
  }

  public static WaterWorks of(CaseStudy study) {
    return new WaterWorks(
        Storage.of(study), Overflows.of(study), Injections.of(study, InjectionNet.of(study)));
  }
}
