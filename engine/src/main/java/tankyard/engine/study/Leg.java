package tankyard.engine.study;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Tank;

/** One way from a separator to a tank: a line, or several through tees. */
record Leg(Separator separator, List<LaidLine> lines, Tank tank) {
  Leg {
    lines = List.copyOf(lines);
  }

  /** Every way of that service out of a separator, in drawn order. */
  static List<Leg> of(Survey survey, Separator separator, Service service) {
    List<Leg> found = new ArrayList<>();
    walk(survey, separator, service, separator.id(), new ArrayList<>(), found);
    return found;
  }

  private static void walk(
      Survey survey,
      Separator separator,
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
      survey.tank(next).ifPresent(tank -> found.add(new Leg(separator, way, tank)));
      if (survey.isTee(next)) {
        walk(survey, separator, service, next, way, found);
      }
    }
  }
}
