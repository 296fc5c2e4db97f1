package tankyard.engine.checks.vessels;

import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.SeparatorResult;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.vessels.Settling;
import tankyard.engine.working.Computed;

/**
 * A separator lets drops out with the other liquid that are larger than what is usually asked of
 * it: water drops of 500 micron out of the oil, oil drops of 200 micron out of the water.
 */
public final class DropsCheck implements Check {
  @Override
  public String id() {
    return "drops-carried-over";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      for (SeparatorResult separator : result.separators()) {
        add(
            worst,
            evidence,
            result,
            separator,
            new Way("water", "oil", Settling.WATER_ASKED, separator.waterDrops()));
        add(
            worst,
            evidence,
            result,
            separator,
            new Way("oil", "water", Settling.OIL_ASKED, separator.oilDrops()));
      }
    }
    return worst.findings();
  }

  /** Drops of one liquid in the layer of the other: which should get out, and which do. */
  private record Way(
      String drops, String layer, Length asked, Optional<Computed<Length>> smallest) {}

  private void add(
      Worst worst, Evidence evidence, CaseResult result, SeparatorResult separator, Way way) {
    way.smallest()
        .filter(drop -> drop.value().metres() > way.asked().metres())
        .ifPresent(
            drop ->
                worst.add(
                    separator.separatorId(),
                    drop.value().metres() / way.asked().metres(),
                    () -> finding(evidence, result, separator, way, drop)));
  }

  private Finding finding(
      Evidence evidence,
      CaseResult result,
      SeparatorResult separator,
      Way way,
      Computed<Length> drop) {
    Versus size = Versus.of(drop.value(), way.asked(), Unit.MILLIMETRE, 2);
    return Finding.of(
            id(),
            Severity.LOOK,
            separator.separatorId(),
            "In "
                + evidence.nameOf(separator.separatorId())
                + " "
                + way.drops()
                + " drops smaller than "
                + size.value()
                + " leave with the "
                + way.layer()
                + "; it is usually asked to part those down to "
                + size.limit()
                + ".",
            Settling.ASKED)
        .inCase(result.designCase().id())
        .mendedBy(
            "Stagger the wells' timers, so that less comes at once.",
            "Move the interface towards the layer that has time to spare, or heat what comes in.",
            "A bigger separator, or a second one beside it.")
        .shownBy(drop.working());
  }
}
