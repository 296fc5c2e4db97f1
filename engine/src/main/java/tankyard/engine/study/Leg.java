package tankyard.engine.study;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Vessel;

/** One way from a vessel to a tank: a line, or several through tees. */
record Leg(Vessel vessel, List<LaidLine> lines, Tank tank) {
  Leg {
    lines = List.copyOf(lines);
  }

  /** Every way of that service out of a vessel, in drawn order. */
  static List<Leg> of(Survey survey, Vessel vessel, Service service) {
    List<Leg> found = new ArrayList<>();
    walk(survey, vessel, service, vessel.id(), new ArrayList<>(), found);
    return found;
  }

  private static void walk(
      Survey survey,
      Vessel vessel,
      Service service,
      String here,
      List<LaidLine> sofar,
      List<Leg> found) {
    for (LaidLine line : survey.laid().values()) {
      boolean goesOn =
          line.line().service() == service
              && line.line().from().equals(here)
              && sofar.stream().noneMatch(l -> l == line);
      if (!goesOn) {
        continue;
      }
      List<LaidLine> way = new ArrayList<>(sofar);
      way.add(line);
      String next = line.line().to();
      survey.tank(next).ifPresent(tank -> found.add(new Leg(vessel, way, tank)));
      if (survey.isTee(next)) {
        walk(survey, vessel, service, next, way, found);
      }
    }
  }
}
