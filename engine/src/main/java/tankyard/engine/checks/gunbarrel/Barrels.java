package tankyard.engine.checks.gunbarrel;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleBiFunction;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.lease.Service;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.GunBarrelFall;
import tankyard.engine.study.GunBarrelResult;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** The gun barrels of every case, and the words their checks share. */
final class Barrels {
  static final Source BY_ITS_FALL =
      Source.definition("a line open to the air at both ends runs by its fall alone");

  static final String STAGGER =
      "Stagger the wells' timers, so that fewer run at once and the surge is less.";

  private Barrels() {}

  /** What a rule says of a leg at its surge in one case. */
  interface AtSurge {
    Finding finding(CaseResult designCase, GunBarrelResult barrel, GunBarrelResult.AtSurge leg);
  }

  /** What a rule says of a line to a tank that can't run in one case. */
  interface OnFall {
    Finding finding(CaseResult designCase, GunBarrelResult barrel, GunBarrelFall fall);
  }

  /**
   * Every leg at its surge that is past a limit, in the case in which it is farthest past it.
   *
   * @param past how far; none of it up to zero
   */
  static List<Finding> atSurge(
      Evidence evidence,
      ToDoubleBiFunction<GunBarrelResult, GunBarrelResult.AtSurge> past,
      AtSurge rule) {
    Worst worst = new Worst();
    for (CaseResult designCase : evidence.cases()) {
      for (GunBarrelResult barrel : designCase.gunBarrels()) {
        barrel
            .leg()
            .filter(leg -> past.applyAsDouble(barrel, leg) > 0)
            .ifPresent(
                leg ->
                    worst.add(
                        barrel.gunBarrelId(),
                        past.applyAsDouble(barrel, leg),
                        () -> rule.finding(designCase, barrel, leg)));
      }
    }
    return worst.findings();
  }

  /** Every line of a service that can't run, in the case in which it falls shortest. */
  static List<Finding> cantRun(Evidence evidence, Service service, OnFall rule) {
    Worst worst = new Worst();
    for (CaseResult designCase : evidence.cases()) {
      for (GunBarrelResult barrel : designCase.gunBarrels()) {
        barrel.falls().stream()
            .filter(f -> f.service() == service && f.spare().value().metres() < 0)
            .forEach(
                f ->
                    worst.add(
                        f.lineId(),
                        -f.spare().value().metres(),
                        () -> rule.finding(designCase, barrel, f)));
      }
    }
    return worst.findings();
  }

  /** Every gun barrel that is past a limit, in the case in which it is farthest past it. */
  static List<Finding> each(Evidence evidence, Rule rule) {
    Worst worst = new Worst();
    for (CaseResult designCase : evidence.cases()) {
      designCase.gunBarrels().forEach(barrel -> rule.look(designCase, barrel, worst));
    }
    return worst.findings();
  }

  /** What a rule makes of one gun barrel in one case. */
  interface Rule {
    void look(CaseResult designCase, GunBarrelResult barrel, Worst worst);
  }

  static String feet(Length length) {
    return Versus.print(length, Unit.FOOT, 2);
  }

  static String inches(Length length) {
    return Versus.print(length, Unit.INCH, 1);
  }

  static String barrels(double barrelsPerDay) {
    return Versus.print(barrelsPerDay, Unit.BARREL_PER_DAY, 0);
  }

  /** The smallest size next to the drawn one that would do, in words. */
  static Optional<String> size(
      GunBarrelResult.AtSurge leg,
      Predicate<GunBarrelResult.Size> does,
      Function<GunBarrelResult.Size, String> words) {
    return leg.sizes().stream().skip(1).filter(does).findFirst().map(words);
  }
}
