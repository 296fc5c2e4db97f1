package tankyard.engine.tanks;

import static java.lang.Math.PI;

import tankyard.engine.fluids.Water;
import tankyard.engine.units.Area;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.verification.Answers;
import tankyard.engine.verification.CheckedRows;

/** Tanks, berms and overflows against published sheets and worked examples. */
class TanksCheckedTest implements CheckedRows {
  private static final Length NONE = Length.ofFeet(0);

  @Override
  public String topic() {
    return "tanks";
  }

  @Override
  public void compute(Answers answers) {
    tanks(answers);
    berms(answers);
    draining(answers);
    overflows(answers);
  }

  private static RoundTank tank(double feet) {
    return new RoundTank(Length.ofFeet(feet));
  }

  private static void tanks(Answers answers) {
    Volume shell = tank(5).between(NONE, Length.ofFeet(8)).value();
    answers.put("TANK-02", "gal", shell.in(Unit.GALLON));
    answers.put("BBL-FT", "10", tank(10).barrelsPerFoot().value().toBarrels());
    answers.put("BBL-FT", "12", tank(12).barrelsPerFoot().value().toBarrels());
    answers.put("BBL-FT", "15.5", tank(15.5).barrelsPerFoot().value().toBarrels());
    for (int feet : new int[] {10, 12}) {
      Volume usable = tank(feet).between(Length.ofFeet(1), Length.ofFeet(14)).value();
      answers.put("PUBLIC-P3", String.valueOf(feet), usable.toBarrels());
    }
  }

  private static double berm(
      double insideFt2, double gallons, double factor, Area under, double rainInches) {
    return Berm.height(
            new BermSpec(
                Area.ofSquareFeet(insideFt2),
                Volume.of(gallons, Unit.GALLON),
                Fraction.of(factor, Unit.ONE),
                under,
                Length.of(rainInches, Unit.INCH),
                NONE))
        .value()
        .toFeet();
  }

  private static void berms(Answers answers) {
    Area nothing = Area.ofSquareFeet(0);
    answers.put("DIKE-01", "volume", Volume.of(20000, Unit.GALLON).toCubicFeet());
    double full = berm(45 * 20, 20000, 1, nothing, 0);
    double more = berm(45 * 20, 20000, 1.1, nothing, 0);
    answers.put("DIKE-01", "wall-100", full);
    answers.put("DIKE-01", "wall-110", more);
    answers.put("DIKE-01", "freeboard", 12 * (more - full));
    answers.put("DIKE-01", "wall-rain", berm(45 * 20, 20000, 1, nothing, 4.5));

    Area second = Area.ofSquareFeet(PI / 4 * 10.5 * 10.5);
    double wall = berm(30 * 75, 20000, 1, second, 0);
    answers.put("DIKE-02", "volume", Volume.of(20000, Unit.GALLON).toCubicFeet());
    answers.put("DIKE-02", "wall-ft", wall);
    answers.put("DIKE-02", "wall-in", 12 * wall);
  }

  private static void draining(Answers answers) {
    double area = PI / 4;
    // The example takes g = 9.8; time goes with the root of g.
    double theirG = Math.sqrt(Water.STANDARD_GRAVITY / 9.8);
    double time = Orifice.round(0.02, 0.6).secondsToFall(area, 1 / area, 0);
    answers.put("DRAIN-01", "time", time * theirG);
    Orifice between = new Orifice(0.01, 0.62);
    answers.put("DRAIN-02", "flow", between.flowM3PerS(0.3));
    answers.put("DRAIN-02", "time", between.secondsToLevel(8, 4, 0.3, 0.1));
  }

  private static void overflows(Answers answers) {
    Overflow pipe = new Overflow(Length.of(0.2, Unit.METRE));
    Fraction slope = Fraction.of(0.001, Unit.ONE);
    LiquidRate flow = LiquidRate.of(0.01, Unit.CUBIC_METRE_PER_SECOND);
    answers.put("GRAV-01", "depth", pipe.depthFor(flow, slope, 0.013).metres());
    answers.put(
        "GRAV-01",
        "full",
        pipe.onSlope(slope, Fraction.ofPercent(100), 0.013).value().cubicMetresPerSecond());
    double[][] sizes = {{2, 2.067}, {3, 3.068}, {4, 4.026}, {6, 6.065}};
    for (double[] size : sizes) {
      Overflow overflow = new Overflow(Length.of(size[1], Unit.INCH));
      answers.put(
          "VENT-01",
          String.valueOf((int) size[0]),
          overflow.selfVenting().value().toBarrelsPerDay());
    }
  }
}
