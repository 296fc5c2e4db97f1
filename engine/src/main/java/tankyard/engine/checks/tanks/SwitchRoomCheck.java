package tankyard.engine.checks.tanks;

import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.Defaults;
import tankyard.engine.study.SwitchResult;
import tankyard.engine.units.Length;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** A high switch with too little room above it for what still comes. */
public final class SwitchRoomCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice("room below the lip for what comes until the wells stand still");

  @Override
  public String id() {
    return "switch-too-high";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      for (SwitchResult high : result.switches()) {
        high.height()
            .filter(h -> h.metres() > high.highest().value().metres())
            .filter(h -> h.metres() < lip(evidence, high.tankId()).metres())
            .ifPresent(
                h ->
                    worst.add(
                        high.tankId(),
                        -high.highest().value().metres(),
                        () -> finding(evidence, result, high, h)));
      }
    }
    return worst.findings();
  }

  private static Length lip(Evidence evidence, String tankId) {
    return evidence.lease().tanks().stream()
        .filter(t -> t.id().equals(tankId))
        .findFirst()
        .orElseThrow()
        .overflowHeight();
  }

  private Finding finding(Evidence evidence, CaseResult result, SwitchResult high, Length height) {
    Optional<Time> typed = evidence.lease().practice().reaction();
    Versus feet = Versus.of(height, high.highest().value(), Unit.FOOT, 2);
    Finding found =
        Finding.of(
                id(),
                typed.isPresent() ? Severity.FIX : Severity.LOOK,
                high.tankId(),
                evidence.nameOf(high.tankId())
                    + "'s high switch is at "
                    + feet.value()
                    + "; for what comes in the "
                    + Versus.print(typed.orElse(Defaults.REACTION).toHours() * 60, Unit.MINUTE, 0)
                    + " until the wells stand still, and drains out of the lines, it must sit no"
                    + " higher than "
                    + feet.limit()
                    + ".",
                SOURCE)
            .inCase(result.designCase().id());
    return found
        .mendedBy(
            high.highest().value().metres() > 0
                ? "Set it at " + Versus.print(down(high.highest().value()), Unit.FOOT, 2) + "."
                : "No height is low enough: a larger tank, or wells that stop sooner.",
            "A switch that stops the wells by itself, and opens when its signal is lost, needs"
                + " minutes where a telephone call needs an hour.")
        .shownBy(high.highest().working());
  }

  /** A switch is set by a tape: to the inch below. */
  private static double down(Length height) {
    return Math.floor(height.toFeet() * 12 + 1e-6) / 12;
  }
}
