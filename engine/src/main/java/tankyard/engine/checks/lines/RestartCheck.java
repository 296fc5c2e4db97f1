package tankyard.engine.checks.lines;

import java.util.List;
import java.util.Set;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/**
 * Lines that gelled while they stood ask for more than a pipe or a stuffing box stands before they
 * start again; or they do not by the typed gel strength, but would by twice of it.
 */
public final class RestartCheck implements Check {
  private static final String OVER_RATING = "restart-over-rating";
  private static final String OVER_BOX = "restart-over-box";
  private static final String IN_DOUBT = "restart-in-doubt";

  private static final Source SOURCE =
      Source.definition("yield of the gel on the whole wall, 4 x strength x length / bore");
  private static final Source DOUBT =
      Source.commonPractice("gel strengths measured twice differ by a factor of two");

  @Override
  public String id() {
    return OVER_RATING;
  }

  @Override
  public Set<String> gives() {
    return Set.of(OVER_RATING, OVER_BOX, IN_DOUBT);
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (RestartLimits at : RestartLimits.of(evidence)) {
      if (at.psi() > at.limitPsi()) {
        worst.add(at.thingId(), at.psi() - at.limitPsi(), () -> over(evidence, at));
      } else if (at.withTwiceTheGelPsi() > at.limitPsi()) {
        worst.add(at.thingId(), at.psi() - at.limitPsi(), () -> inDoubt(evidence, at));
      }
    }
    return worst.findings();
  }

  private static Finding over(Evidence evidence, RestartLimits at) {
    Versus psi = Versus.of(at.psi(), at.limitPsi(), Unit.PSI, 1);
    return Finding.of(
            at.box() ? OVER_BOX : OVER_RATING,
            Severity.FIX,
            at.thingId(),
            "After standing cold, "
                + evidence.nameOf(at.thingId())
                + " needs "
                + psi.value()
                + " to start again, "
                + Versus.print(at.gelPsi(), Unit.PSI, 1)
                + " of it for the gel; "
                + stands(at)
                + psi.limit()
                + ".",
            SOURCE)
        .inCase(at.result().designCase().id())
        .shownBy(at.working())
        .mendedBy(
            "Bring produced water back to the wells until the water carries the oil: then nothing"
                + " gels.",
            "A bigger line: the gel yields at a pressure that falls with the bore.",
            "Drain it down or displace it with water before any planned stop.");
  }

  private static Finding inDoubt(Evidence evidence, RestartLimits at) {
    Versus psi = Versus.of(at.withTwiceTheGelPsi(), at.limitPsi(), Unit.PSI, 1);
    return Finding.of(
            IN_DOUBT,
            Severity.LOOK,
            at.thingId(),
            "After standing cold, "
                + evidence.nameOf(at.thingId())
                + " needs "
                + Versus.print(at.psi(), Unit.PSI, 1)
                + " to start again; with a gel twice as strong, as two measurements of one oil may"
                + " differ, "
                + psi.value()
                + ", and "
                + stands(at)
                + psi.limit()
                + ". It can't be trusted to start.",
            DOUBT)
        .inCase(at.result().designCase().id())
        .shownBy(at.working())
        .mendedBy(
            "Drain it down or displace it with water before any planned stop.",
            "Have the gel strength measured again at the coldest ground, on oil that cooled"
                + " undisturbed.",
            "Bring produced water back to the wells until the water carries the oil: then nothing"
                + " gels.");
  }

  private static String stands(RestartLimits at) {
    return at.box() ? "its box is trusted with " : "its pipe stands ";
  }
}
