package tankyard.engine.study;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Vessel;

/** What other vessels send through the lines of a vessel's legs at the same time. */
final class SharedLegs {
  private SharedLegs() {}

  /**
   * Of every other vessel, once for a line however many tanks lie beyond it.
   *
   * @param rate m3/s out of a vessel by a leg of that service
   * @return m3/s by the line's id
   */
  static Map<String, Double> beside(
      Survey survey, Vessel vessel, Service service, ToDoubleFunction<Vessel> rate) {
    Map<String, Double> beside = new HashMap<>();
    for (Vessel other : survey.vessels()) {
      if (!other.id().equals(vessel.id())) {
        lines(survey, other, service)
            .forEach(line -> beside.merge(line, rate.applyAsDouble(other), Double::sum));
      }
    }
    return beside;
  }

  private static Set<String> lines(Survey survey, Vessel vessel, Service service) {
    return Leg.of(survey, vessel, service).stream()
        .flatMap(leg -> leg.lines().stream())
        .map(LaidLine::id)
        .collect(Collectors.toSet());
  }
}
