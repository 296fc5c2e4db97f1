package tankyard.engine.study;

import java.util.List;
import java.util.Optional;
import tankyard.engine.catalog.Material;
import tankyard.engine.lease.Service;
import tankyard.engine.tanks.Overflow;
import tankyard.engine.tanks.RoundTank;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * What each overflow passes against all the fluid, since a stuck dump valve sends everything over
 * with the oil: the lesser of what it swallows and what it carries on its slope. Two lips at one
 * height say nothing of how the pipe falls between them, so such a slope is not counted against it
 * but asked for.
 */
final class Overflows {
  private Overflows() {}

  static List<OverflowResult> of(CaseStudy study) {
    LiquidRate all = study.allFluid();
    return study.survey().laid().values().stream()
        .filter(l -> l.line().service() == Service.OVERFLOW)
        .map(l -> result(study.survey(), l, all))
        .toList();
  }

  private static OverflowResult result(Survey survey, LaidLine laid, LiquidRate all) {
    Overflow overflow = new Overflow(laid.pipe().bore());
    Computed<LiquidRate> swallows = overflow.selfVenting();
    Optional<Length> fall = fall(laid);
    double n = manningN(laid.pipe().material());
    return new OverflowResult(
        laid.id(),
        fall.map(f -> overflow.capacity(slope(f, laid), Overflow.USUAL_FILLING, n))
            .orElse(swallows),
        all,
        fall,
        Optional.of(swallows)
            .filter(s -> s.value().toBarrelsPerDay() >= all.toBarrelsPerDay())
            .map(s -> leastFall(overflow, laid, all, n)),
        survey
            .tank(laid.line().to())
            .filter(tank -> all.toBarrelsPerDay() > 0)
            .map(tank -> RoundTank.lasts(Storage.catches(tank), all)));
  }

  /** As typed, else as drawn; empty where it does not fall. */
  private static Optional<Length> fall(LaidLine laid) {
    List<LaidLine.Peg> pegs = laid.pegs();
    double drawn = pegs.get(0).elevationM() - pegs.get(pegs.size() - 1).elevationM();
    return Optional.of(laid.line().fall().orElse(LaidLine.feet(drawn)))
        .filter(f -> f.metres() > LEAST_M);
  }

  /** Less is not laid by hand, and is the rounding of two heights that are the same. */
  private static final double LEAST_M = 1e-6;

  private static Fraction slope(Length fall, LaidLine laid) {
    return Fraction.ofPercent(100 * fall.metres() / lengthM(laid));
  }

  private static double lengthM(LaidLine laid) {
    return Math.max(laid.trenchM(), SHORTEST_M);
  }

  /** Tanks that stand on one spot of the map are still a nozzle apart. */
  private static final double SHORTEST_M = 0.3048;

  private static double manningN(Material material) {
    return switch (material) {
      case POLYETHYLENE, PVC, FIBREGLASS -> Overflow.PLASTIC_N;
      case STEEL, BRASS, OTHER -> Overflow.STEEL_N;
    };
  }

  private static Computed<Length> leastFall(
      Overflow overflow, LaidLine laid, LiquidRate all, double manningN) {
    Computed<Fraction> slope = overflow.leastSlope(all, Overflow.USUAL_FILLING, manningN);
    double length = lengthM(laid);
    return Computed.of(
        Length.of(Unit.INCH.fromSi(slope.value().ratio() * length), Unit.INCH),
        () ->
            Working.of(
                    "Fall that carries all the fluid",
                    "z",
                    "S/100*L*12",
                    Unit.INCH,
                    Source.definition("slope times length"),
                    Term.of("S", "slope", slope.value(), Unit.PERCENT),
                    Term.of("L", "length of the overflow", LaidLine.feet(length), Unit.FOOT))
                .from(List.of(slope.working())));
  }
}
