package tankyard.engine.study;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Thing;

/** What an unfinished lease still lacks, said so that a person can mend it. */
final class Gaps {
  private Gaps() {}

  static List<Diagnosis> of(Survey survey) {
    List<Diagnosis> found = new ArrayList<>();
    Lease lease = survey.lease();
    if (lease.wells().stream().noneMatch(w -> w.status().stays())) {
      found.add(new Diagnosis("no-wells", "", "There is no well yet: place one on the map."));
    }
    if (survey.separators().isEmpty()) {
      found.add(
          new Diagnosis(
              "no-separator", "", "There is no separator yet: place one where the lines meet."));
    }
    if (lease.cases().isEmpty()) {
      found.add(
          new Diagnosis(
              "no-cases", "", "There is no design case: add one, for example summer today."));
    }
    if (survey.ground().surface().spots().isEmpty()) {
      found.add(
          new Diagnosis(
              "no-heights",
              "",
              "No ground height is known anywhere; the lease is taken to be flat. Type the ground of"
                  + " two things at least."));
    }
    if (!survey.separators().isEmpty()) {
      survey.gathering().cutOff().forEach(thing -> found.add(cutOff(thing)));
    }
    found.addAll(GasGaps.of(survey));
    for (Separator separator : survey.separators()) {
      leg(survey, separator, Service.WATER_LEG, "no-water-leg", "a water tank", found);
      leg(survey, separator, Service.OIL_LEG, "no-oil-leg", "an oil tank", found);
    }
    return found;
  }

  private static Diagnosis cutOff(Thing thing) {
    return new Diagnosis(
        "no-way-to-separator",
        thing.id(),
        thing.name() + " has no way to a separator: draw a flow line from it.");
  }

  private static void leg(
      Survey survey,
      Separator separator,
      Service service,
      String id,
      String tank,
      List<Diagnosis> found) {
    if (Leg.of(survey, separator, service).isEmpty()) {
      found.add(
          new Diagnosis(
              id,
              separator.id(),
              separator.name()
                  + " has no "
                  + service.words()
                  + " to "
                  + tank
                  + ": draw one and the window can be worked out."));
    }
  }
}
