package tankyard.engine.checks.gunbarrel;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.GunBarrelFall;
import tankyard.engine.study.GunBarrelResult;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;

/** The gun barrels of every case, and the words their checks share. */
final class Barrels {
  static final String STAGGER =
      "Stagger the wells' timers, so that fewer run at once and the surge is less.";

  private Barrels() {}

  /** What a rule makes of one gun barrel in one case. */
  interface Rule {
    void look(CaseResult designCase, GunBarrelResult barrel, Worst worst);
  }

  static List<Finding> each(Evidence evidence, Rule rule) {
    Worst worst = new Worst();
    for (CaseResult designCase : evidence.cases()) {
      designCase.gunBarrels().forEach(barrel -> rule.look(designCase, barrel, worst));
    }
    return worst.findings();
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

  /** Sizes that would do, in words, the smallest first. */
  static List<String> sizes(
      GunBarrelResult.AtSurge leg,
      Predicate<GunBarrelResult.Size> does,
      BiFunction<String, GunBarrelResult.Size, String> words) {
    List<String> found = new ArrayList<>();
    leg.sizes().stream()
        .skip(1)
        .filter(does)
        .findFirst()
        .ifPresent(s -> found.add(words.apply(s.name(), s)));
    return found;
  }

  /** The falls of one service that can't run, the worst counts. */
  static void cantRun(
      CaseResult designCase,
      GunBarrelResult barrel,
      Predicate<GunBarrelFall> wanted,
      Worst worst,
      java.util.function.Function<GunBarrelFall, Finding> finding) {
    barrel.falls().stream()
        .filter(wanted)
        .filter(f -> f.spare().value().metres() < 0)
        .forEach(f -> worst.add(f.lineId(), -f.spare().value().metres(), () -> finding.apply(f)));
  }
}
