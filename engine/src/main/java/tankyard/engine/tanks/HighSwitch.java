package tankyard.engine.tanks;

import java.util.List;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * How high the high-level switch of a tank may sit. Once it trips, liquid keeps coming until the
 * wells stand still, and what lies in the lines above the battery still drains down; all of it must
 * find room below the lip of the overflow.
 *
 * @param tank the switch is on
 * @param lip of the overflow, above the bottom
 * @param rate that comes when the switch is needed
 * @param reaction until the wells stand still
 * @param drainBack what the lines above still bring
 */
public record HighSwitch(
    RoundTank tank, Length lip, LiquidRate rate, Time reaction, Volume drainBack) {
  private static final Source BALANCE =
      Source.commonPractice("room below the lip for what comes until the wells stand still");

  /** The highest it may sit above the bottom; below zero where no height is low enough. */
  public Computed<Length> highest() {
    double cubicMetres = rate.cubicMetresPerSecond() * reaction.seconds() + drainBack.cubicMetres();
    double metres = lip.metres() - cubicMetres / tank.areaM2();
    Computed<Volume> foot = tank.barrelsPerFoot();
    return Computed.of(
        Length.ofFeet(Unit.FOOT.fromSi(metres)),
        () ->
            Working.of(
                    "Highest place for the high switch, above the bottom",
                    "h",
                    "H-(Q*t/24+V)/b",
                    Unit.FOOT,
                    BALANCE,
                    Term.of("H", "lip of the overflow", lip, Unit.FOOT),
                    Term.of("Q", "rate that comes", rate, Unit.BARREL_PER_DAY),
                    Term.of("t", "until the wells stand still", reaction, Unit.HOUR),
                    Term.of("V", "drains out of the lines above", drainBack, Unit.BARREL),
                    Term.of("b", "barrels in one foot", foot.value(), Unit.BARREL))
                .from(List.of(foot.working())));
  }

  /** From the switch to the lip, should the switch fail. */
  public Computed<Time> failsIn(Length height) {
    Length low = height.metres() <= lip.metres() ? height : lip;
    return RoundTank.lasts(tank.between(low, lip), rate);
  }
}
