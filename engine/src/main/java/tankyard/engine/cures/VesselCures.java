package tankyard.engine.cures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.catalog.ValveType;
import tankyard.engine.lease.DumpValve;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.SeparatorBuilder;
import tankyard.engine.lease.Status;
import tankyard.engine.units.Cv;

/** A bigger dump valve: less is lost in it, and its float pulls a bigger port less far open. */
final class VesselCures {
  private static final double WORTH_CV = 1.05;
  private static final double WITHOUT_A_STORE = 2;
  private static final String NOT_BOUGHT =
      " The separator is there already, so the bill does not buy the valve.";

  private VesselCures() {}

  static List<Cure> of(CureSite site) {
    DumpValve now = site.separator().dumpValve();
    Optional<ValveType> next =
        site.catalog().list(ValveType.class).stream()
            .filter(v -> v.duty() == ValveType.Duty.DUMP && v.cv().isPresent())
            .filter(v -> cv(v) > WORTH_CV * now.cv().toGpmPerRootPsi())
            .min(Comparator.comparingDouble(VesselCures::cv));
    List<Cure> found = new ArrayList<>();
    next.ifPresent(
        valve ->
            found.add(
                cure(
                    site,
                    valve.name() + ", Cv " + print(cv(valve)),
                    "",
                    now.withCv(valve.cv().orElseThrow())
                        .withModel(Optional.of(valve.id()))
                        .withPort(valve.port()))));
    if (next.isEmpty()) {
      double twice = WITHOUT_A_STORE * now.cv().toGpmPerRootPsi();
      found.add(
          cure(
              site,
              "a dump valve of twice the Cv, " + print(twice),
              "Its port is not known, so the float's pull on it is not checked.",
              now.withCv(Cv.ofGpmPerRootPsi(twice))
                  .withModel(Optional.empty())
                  .withPort(Optional.empty())));
    }
    return found;
  }

  private static Cure cure(CureSite site, String words, String care, DumpValve valve) {
    String more = site.separator().status() == Status.NEW ? care : (care + NOT_BOUGHT).strip();
    return new Cure(
        "bigger-dump-valve",
        site.separator().id(),
        words,
        more,
        site.separator().status() == Status.NEW ? CureResult.Billing.ALL : CureResult.Billing.PART,
        lease -> with(lease, site, valve));
  }

  private static Lease with(Lease lease, CureSite site, DumpValve valve) {
    return lease.with(SeparatorBuilder.builder(site.separator()).dumpValve(valve).build());
  }

  private static double cv(ValveType valve) {
    return valve.cv().orElseThrow().toGpmPerRootPsi();
  }

  private static String print(double cv) {
    return tankyard.engine.units.Figures.significant(cv, 3);
  }
}
