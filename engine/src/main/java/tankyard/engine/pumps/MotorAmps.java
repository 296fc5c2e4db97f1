package tankyard.engine.pumps;

import tankyard.engine.units.Current;
import tankyard.engine.units.Power;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Amps at full load by the size of a motor, as wire is sized by where no nameplate was read. Tables
 * for 230 V, from memory; other voltages as 230 over them; straight between two sizes, and in the
 * measure of the last size beyond.
 */
public final class MotorAmps {
  private static final double TABLE_VOLTS = 230;
  private static final Source TABLE =
      Source.memory("table of full-load motor amps at 230 V, as in US electrical codes");

  private static final double[] ONE_PHASE_HP = {0.5, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10};
  private static final double[] ONE_PHASE_AMPS = {4.9, 6.9, 8, 10, 12, 17, 28, 40, 50};
  private static final double[] THREE_PHASE_HP = {
    0.5, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 100
  };
  private static final double[] THREE_PHASE_AMPS = {
    2.2, 3.2, 4.2, 6, 6.8, 9.6, 15.2, 22, 28, 42, 54, 68, 80, 104, 130, 154, 192, 248
  };

  private MotorAmps() {}

  /** What a motor of that nameplate power draws from a supply at full load. */
  public static Computed<Current> of(Power motor, MotorSupply supply) {
    boolean one = supply.phases() == MotorSupply.Phases.ONE;
    double table =
        one
            ? read(ONE_PHASE_HP, ONE_PHASE_AMPS, motor.toHorsepower())
            : read(THREE_PHASE_HP, THREE_PHASE_AMPS, motor.toHorsepower());
    double amps = table * TABLE_VOLTS / supply.volts().volts();
    return Computed.of(
        Current.ofAmps(amps),
        () ->
            Working.of(
                "Amps at full load",
                "I",
                "I230*230/U",
                Unit.AMPERE,
                TABLE,
                Term.of(
                    "I230",
                    "table at 230 V, " + (one ? "one phase" : "three phases"),
                    table,
                    Unit.AMPERE),
                Term.of("U", "voltage", supply.volts(), Unit.VOLT)));
  }

  private static double read(double[] hp, double[] amps, double size) {
    int last = hp.length - 1;
    if (size <= hp[0] || size >= hp[last]) {
      int end = size <= hp[0] ? 0 : last;
      return amps[end] * size / hp[end];
    }
    int above = 1;
    while (hp[above] < size) {
      above++;
    }
    double share = (size - hp[above - 1]) / (hp[above] - hp[above - 1]);
    return amps[above - 1] + share * (amps[above] - amps[above - 1]);
  }
}
