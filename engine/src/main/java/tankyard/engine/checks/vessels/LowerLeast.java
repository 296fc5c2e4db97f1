package tankyard.engine.checks.vessels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Versus;
import tankyard.engine.lease.Tank;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Window;

/** What would lower the least gauge reading, and by how much, in the order of usual cost. */
final class LowerLeast {
  private static final double WORTH_SAYING_PSI = 0.05;

  /** Twice the Cv loses a quarter. */
  private static final double SAVED_BY_TWICE_THE_CV = 0.75;

  private final Evidence evidence;
  private final Window window;
  private final PressureLimit least;
  private final List<String> ways = new ArrayList<>();

  private LowerLeast(Evidence evidence, Window window) {
    this.evidence = evidence;
    this.window = window;
    this.least = window.least().orElseThrow();
  }

  static List<String> ways(Evidence evidence, Window window) {
    return window.least().isEmpty() ? List.of() : new LowerLeast(evidence, window).all();
  }

  private List<String> all() {
    Optional<CaseStudy> study =
        evidence.studies().stream()
            .filter(s -> s.designCase().id().equals(least.caseId()))
            .findFirst();
    valve();
    study.flatMap(s -> BiggerLeg.of(window, s)).ifPresent(this::leg);
    study.ifPresent(
        s -> {
          double psiPerFoot = Unit.PSI.fromSi(s.brine().liquid().staticPascals(Unit.FOOT.toSi(1)));
          hill(psiPerFoot);
          bottomFill(psiPerFoot);
        });
    ways.add(
        "Move the water tank and the injection pump to the battery and stretch the injection line:"
            + " its loss does not touch the wells.");
    return List.copyOf(ways);
  }

  private void valve() {
    double then =
        window.needed().stream()
            .mapToDouble(l -> l.gauge().value().toPsi() - SAVED_BY_TWICE_THE_CV * l.valve().toPsi())
            .max()
            .orElse(leastPsi());
    say("A dump valve of twice the Cv", then);
  }

  private void leg(BiggerLeg bigger) {
    say(
        bigger.pipe().name()
            + " in place of "
            + bigger.line().pipe().name()
            + " for "
            + bigger.line().line().name(),
        bigger.leastPsi());
  }

  /** A trench ends at whatever asks for the next most, a way round at what is no crest. */
  private void hill(double psiPerFoot) {
    if (least.crest().isEmpty()) {
      return;
    }
    Optional<PressureLimit> next =
        window.needed().stream().filter(l -> !l.name().equals(least.name())).findFirst();
    String round =
        next.filter(l -> l.crest().isPresent())
            .flatMap(l -> floor())
            .map(l -> "; round every crest, " + downTo(l))
            .orElse("");
    ways.add(
        "Go round the hill, or trench deeper at the crest: "
            + Versus.print(psiPerFoot, Unit.PSI, 2)
            + " less a foot"
            + next.map(l -> ", " + downTo(l)).orElse("")
            + round
            + ".");
  }

  private Optional<PressureLimit> floor() {
    return window.needed().stream().filter(l -> l.crest().isEmpty()).findFirst();
  }

  private static String downTo(PressureLimit limit) {
    return "down to " + LimitName.reading(limit) + " (" + limit.name() + ")";
  }

  /** A full tank gives back no more than the height of its inlet over the overflow. */
  private void bottomFill(double psiPerFoot) {
    if (least.kind() != PressureLimit.Kind.TANK_INLET) {
      return;
    }
    evidence
        .lease()
        .line(least.thingId())
        .flatMap(line -> evidence.lease().thing(line.to()))
        .filter(Tank.class::isInstance)
        .map(Tank.class::cast)
        .ifPresent(
            tank -> {
              double feet = tank.inletHeight().toFeet() - tank.overflowHeight().toFeet();
              String name = "Filling " + tank.name() + " from below, with a check valve";
              say(name, atLeastNext(leastPsi() - feet * psiPerFoot));
            });
  }

  /** No cure at the tank helps below what the next limit asks for. */
  private double atLeastNext(double psi) {
    return window.needed().stream()
        .filter(l -> !l.name().equals(least.name()))
        .mapToDouble(l -> l.gauge().value().toPsi())
        .filter(next -> next > psi)
        .max()
        .orElse(psi);
  }

  private void say(String way, double thenPsi) {
    double saved = leastPsi() - thenPsi;
    if (saved >= WORTH_SAYING_PSI) {
      ways.add(
          way + ": least " + psi(Rounding.UP.round(thenPsi, 1)) + ", " + psi(saved) + " less.");
    }
  }

  private double leastPsi() {
    return least.gauge().value().toPsi();
  }

  private static String psi(double value) {
    return Versus.print(value, Unit.PSI, 1);
  }
}
