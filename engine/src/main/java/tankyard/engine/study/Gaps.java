package tankyard.engine.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tankyard.engine.lease.Fluids;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Vessel;
import tankyard.engine.units.Figures;

/** What an unfinished lease still lacks, said so that a person can mend it. */
final class Gaps {
  private Gaps() {}

  static List<Diagnosis> of(Survey survey) {
    List<Diagnosis> found = new ArrayList<>();
    Lease lease = survey.lease();
    if (lease.wells().stream().noneMatch(w -> w.status().stays())) {
      found.add(new Diagnosis("no-wells", "", "There is no well yet: place one on the map."));
    }
    if (survey.vessels().isEmpty()) {
      found.add(
          new Diagnosis(
              "no-separator",
              "",
              "There is no separator or gun barrel yet: place one where the lines meet."));
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
    if (!survey.vessels().isEmpty()) {
      survey.gathering().cutOff().forEach(thing -> found.add(cutOff(thing)));
    }
    found.addAll(GasGaps.of(survey));
    for (Vessel vessel : survey.vessels()) {
      leg(survey, vessel, Service.WATER_LEG, "no-water-leg", "a water tank", found);
      leg(survey, vessel, Service.OIL_LEG, "no-oil-leg", "an oil tank", found);
    }
    survey.gunBarrels().forEach(barrel -> ofGunBarrel(survey, barrel, found));
    return found;
  }

  private static void ofGunBarrel(Survey survey, GunBarrel barrel, List<Diagnosis> found) {
    Stream.concat(Stream.of(barrel.legPipe()), barrel.downcomerPipe().stream())
        .filter(pipe -> survey.catalog().pipe(pipe).isEmpty())
        .findFirst()
        .ifPresent(
            pipe ->
                found.add(
                    new Diagnosis(
                        "pipe-unknown",
                        barrel.id(),
                        barrel.name()
                            + "'s leg is of \""
                            + pipe
                            + "\", which no catalogue lists: choose a pipe, or add it with its bore"
                            + " to the lease's own pipes.")));
    Fluids fluids = survey.lease().fluids();
    if (!GunBarrelCuts.floats(fluids.oil(), fluids.brine())) {
      found.add(
          new Diagnosis(
              "no-oil-afloat",
              barrel.id(),
              "Oil of "
                  + Figures.significant(fluids.oil().specific(), 4)
                  + " SG does not float on water of "
                  + Figures.significant(fluids.brine().specific(), 4)
                  + " SG: "
                  + barrel.name()
                  + " can't part them by weight. Check both gravities."));
    }
  }

  private static Diagnosis cutOff(Thing thing) {
    return new Diagnosis(
        "no-way-to-separator",
        thing.id(),
        thing.name() + " has no way to a separator or gun barrel: draw a flow line from it.");
  }

  private static void leg(
      Survey survey,
      Vessel vessel,
      Service service,
      String id,
      String tank,
      List<Diagnosis> found) {
    if (Leg.of(survey, vessel, service).isEmpty()) {
      found.add(
          new Diagnosis(
              id,
              vessel.id(),
              vessel.name()
                  + " has no "
                  + service.words()
                  + " to "
                  + tank
                  + ": draw one and "
                  + (vessel instanceof GunBarrel
                      ? "whether it runs can be worked out."
                      : "the window can be worked out.")));
    }
  }
}
