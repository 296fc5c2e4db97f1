package tankyard.engine.valves;

import tankyard.engine.fluids.AbsolutePressure;
import tankyard.engine.units.Cv;
import tankyard.engine.units.GasRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * What a valve that stands wide open passes of gas into the open air: {@code Q = 1360 Cv P1 Y
 * sqrt(x / (G T))}, scf/h, psia and °R, with {@code Y = 1 - x / (3 Fk xT)}; from {@code x = Fk xT}
 * on it is choked and passes no more. Fk 0.91 for gas of a ratio of specific heats of 1.27, xT 0.70
 * for a lever valve with a single seat, z 1: at the pressures of a separator.
 */
public final class GasThrough {
  private static final double FK = 0.91;
  private static final double XT = 0.70;
  private static final Source SOURCE =
      Source.memory("IEC 60534-2-1, gas through a control valve; xT 0.70, Fk 0.91, z 1");

  private GasThrough() {}

  /**
   * The rate with the valve wide open.
   *
   * @param gauge before the valve
   * @param air pressure of the air
   * @param gravity of the gas against air
   */
  public static Computed<GasRate> wideOpen(
      Cv cv, Pressure gauge, AbsolutePressure air, double gravity, Temperature temperature) {
    double upstreamPsia = air.toPsia() + Math.max(0, gauge.toPsi());
    double x = Math.min(Math.max(0, gauge.toPsi()) / upstreamPsia, FK * XT);
    double rankine = temperature.toFahrenheit() + 459.67;
    double scfPerHour =
        1360
            * cv.toGpmPerRootPsi()
            * upstreamPsia
            * (1 - x / (3 * FK * XT))
            * Math.sqrt(x / (gravity * rankine));
    return Computed.of(
        GasRate.of(scfPerHour, Unit.CUBIC_FOOT_PER_HOUR),
        () ->
            Working.of(
                "Gas through the dump valve, stuck open",
                "G",
                "1360*Cv*P*(1-x/(3*Fk*xT))*sqrt(x/(SG*(T+459.67)))",
                Unit.CUBIC_FOOT_PER_HOUR,
                SOURCE,
                Term.of("Cv", "wide open", cv, Unit.CV),
                Term.of("P", "absolute pressure before it", upstreamPsia, Unit.PSI),
                Term.number("x", "share of it lost in the valve, up to where it chokes", x),
                Term.number("Fk", "specific heats against those of air", FK),
                Term.number("xT", "where the valve chokes", XT),
                Term.number("SG", "gas against air", gravity),
                Term.of("T", "temperature", temperature, Unit.FAHRENHEIT)));
  }
}
