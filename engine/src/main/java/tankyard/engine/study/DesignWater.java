package tankyard.engine.study;

import java.util.List;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.Vessel;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * The rate a water leg is sized for. On the day's average: so many times the average by habit, but
 * no more than all fluid at the top of every stroke, since a vessel full of liquid can't let out
 * more than comes in. With all wells on: their water while they run. The leg of a gun barrel must
 * then pass all their fluid: a slug of water holds no oil.
 */
final class DesignWater {
  private static final Source HABIT =
      Source.commonPractice("twice the average, capped by the peak of all fluid coming in");
  private static final Source ALL_ON = Source.commonPractice("every well's water while it runs");

  private static final Source SURGE =
      Source.commonPractice("every well's fluid while it runs, as if it were all water");

  private DesignWater() {}

  static Computed<LiquidRate> of(CaseStudy study, Vessel vessel) {
    List<WellFlow> wells = study.wellsOf(vessel.id());
    if (study.designCase().running() == DesignCase.Running.ALL_ON) {
      return vessel instanceof GunBarrel ? surge(wells) : allOn(wells);
    }
    Fraction times = Defaults.designWater(study.lease().practice());
    double average = barrels(wells.stream().mapToDouble(w -> w.waterDay() + w.returned()).sum());
    double peak = barrels(wells.stream().mapToDouble(WellFlow::peak).sum());
    return Computed.of(
        LiquidRate.ofBarrelsPerDay(Math.min(times.ratio() * average, peak)),
        () ->
            Working.of(
                "Design water rate",
                "Q",
                "min(n*Qw,Qp)",
                Unit.BARREL_PER_DAY,
                HABIT,
                Term.number("n", "times the average", times.ratio()),
                Term.of("Qw", "water, day's average", average, Unit.BARREL_PER_DAY),
                Term.of("Qp", "all fluid at the top of every stroke", peak, Unit.BARREL_PER_DAY)));
  }

  private static Computed<LiquidRate> allOn(List<WellFlow> wells) {
    double water = barrels(wells.stream().mapToDouble(WellFlow::water).sum());
    return Computed.of(
        LiquidRate.ofBarrelsPerDay(water),
        () ->
            Working.of(
                "Design water rate, all wells on",
                "Q",
                "Qw",
                Unit.BARREL_PER_DAY,
                ALL_ON,
                Term.of("Qw", "water while every well runs", water, Unit.BARREL_PER_DAY)));
  }

  private static Computed<LiquidRate> surge(List<WellFlow> wells) {
    double fluid = barrels(wells.stream().mapToDouble(WellFlow::fluid).sum());
    return Computed.of(
        LiquidRate.ofBarrelsPerDay(fluid),
        () ->
            Working.of(
                "Surge, all wells on",
                "Q",
                "Qf",
                Unit.BARREL_PER_DAY,
                SURGE,
                Term.of("Qf", "all fluid while every well runs", fluid, Unit.BARREL_PER_DAY)));
  }

  private static double barrels(double cubicMetresPerSecond) {
    return Unit.BARREL_PER_DAY.fromSi(cubicMetresPerSecond);
  }
}
