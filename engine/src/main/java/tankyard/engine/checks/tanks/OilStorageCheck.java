package tankyard.engine.checks.tanks;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.lease.Tank;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.StorageResult;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;

/** The oil tanks hold less than a load and what comes while the road is out. */
public final class OilStorageCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice("room for one load and for what comes while the road is out");

  @Override
  public String id() {
    return "oil-storage-short";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      StorageResult storage = result.storage();
      if (storage.oilUsable().isPresent() && storage.oilNeeded().isPresent()) {
        offer(evidence, result, storage.oilUsable().get(), storage.oilNeeded().get(), worst);
      }
    }
    return worst.findings();
  }

  private void offer(
      Evidence evidence,
      CaseResult result,
      Computed<Volume> usable,
      Computed<Volume> needed,
      Worst worst) {
    double shortBy = needed.value().toBarrels() - usable.value().toBarrels();
    if (shortBy > 0) {
      worst.add("", shortBy, () -> finding(evidence, result, usable, needed));
    }
  }

  private Finding finding(
      Evidence evidence, CaseResult result, Computed<Volume> usable, Computed<Volume> needed) {
    Versus bbl = Versus.of(usable.value(), needed.value(), Unit.BARREL, 1);
    String days =
        result
            .storage()
            .roadOut()
            .map(t -> "; the road may be out " + Versus.print(t.value(), Unit.DAY_UNIT, 1))
            .orElse("");
    List<Tank> tanks = evidence.survey().tanks(Tank.Duty.OIL);
    String what = tanks.size() == 1 ? "One oil tank is not enough: " : "The oil tanks: ";
    return Finding.of(
            id(),
            Severity.FIX,
            "",
            what
                + bbl.value()
                + " between sales outlet and high switch, "
                + bbl.limit()
                + " needed for a load and the days the road is out"
                + days
                + ".",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(ways(tanks, needed.value().toBarrels() - usable.value().toBarrels()))
        .shownBy(usable.working());
  }

  private static List<String> ways(List<Tank> tanks, double shortBy) {
    String room = Versus.print(shortBy, Unit.BARREL, 0);
    List<String> ways = new ArrayList<>();
    if (tanks.size() == 1) {
      ways.add("Set a second oil tank: one settles and is sold while the other fills.");
    } else {
      ways.add(
          "Set another oil tank, or a bigger one in place of the smallest: " + room + " more.");
    }
    ways.add("Haul smaller loads more often, or mend the road, so that less must be held.");
    return ways;
  }
}
