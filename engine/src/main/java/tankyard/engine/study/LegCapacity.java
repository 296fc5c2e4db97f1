package tankyard.engine.study;

import java.util.List;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.numeric.Roots;
import tankyard.engine.pipes.PipeRun;
import tankyard.engine.pipes.RunLoss;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * The rate a run of pipe passes under a head.
 *
 * @param headM metres of the liquid itself
 */
record LegCapacity(PipeRun run, Liquid liquid, double headM) {
  private static final double FIRST_GUESS = 1e-3;
  private static final Source DARCY =
      Source.published("Darcy-Weisbach, friction factor of Darcy, solved for the rate");

  Computed<LiquidRate> rate() {
    double flow = flow();
    return Computed.of(CaseStudy.barrels(flow), () -> working(flow));
  }

  private double flow() {
    if (headM <= 0) {
      return 0;
    }
    double high = FIRST_GUESS;
    while (excess(high) < 0) {
      high *= 2;
    }
    return Roots.between("rate", this::excess, 0, high);
  }

  private double excess(double flow) {
    double lost = new RunLoss(run, liquid, flow).friction().value().pascals();
    return lost / liquid.staticPascals(1) - headM;
  }

  private Working working(double flow) {
    RunLoss loss = new RunLoss(run, liquid, flow);
    double factor = flow > 0 ? loss.state().frictionFactor() : 1;
    return Working.of(
            "Most the leg passes before water leaves with the oil",
            "Q",
            "sqrt(0.433101*h*d/(0.006730594*12*f*L))*d^2/0.01191452",
            Unit.BARREL_PER_DAY,
            DARCY,
            Term.of("h", "from the weir up to the oil outlet", Unit.FOOT.fromSi(headM), Unit.FOOT),
            Term.of("d", "bore", Unit.INCH.fromSi(run.boreM()), Unit.INCH),
            Term.number("f", "friction factor at that rate", factor),
            Term.of(
                "L", "leg with its fittings", Unit.FOOT.fromSi(run.path().lengthM()), Unit.FOOT))
        .from(flow > 0 ? List.of(loss.frictionFactor().working()) : List.of());
  }
}
