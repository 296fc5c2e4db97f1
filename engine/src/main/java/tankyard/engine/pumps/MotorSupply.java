package tankyard.engine.pumps;

import tankyard.engine.units.Current;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.Power;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Voltage;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * The supply of a motor, and what of its voltage the wire takes.
 *
 * <p>The local electrical code and a licensed electrician decide on wire, breaker and starter.
 *
 * @param volts between the wires, above zero
 * @param phases of the supply
 */
public record MotorSupply(Voltage volts, Phases phases) {
  /**
   * A motor draws about so many times its running amps as it starts; common practice, no source.
   */
  public static final double STARTING = 6;

  private static final int THINNEST = 14;
  private static final int THICKEST = -3;
  private static final Source AMPS =
      Source.definition("power over volts, efficiency, power factor");
  private static final Source START =
      Source.commonPractice("a motor starts on about six times its running amps");
  private static final Source DROP =
      Source.memory(
          "drop = 2 K I L/CM, 1.732 in place of 2 for three phases; K 12.9 copper, 21.2 aluminium");

  /** How many phases the supply has. */
  public enum Phases {
    ONE(2, 1),
    THREE(Math.sqrt(3), Math.sqrt(3));

    private final double wires;
    private final double amps;

    Phases(double wires, double amps) {
      this.wires = wires;
      this.amps = amps;
    }
  }

  /** What the wire is made of. */
  public enum Metal {
    COPPER(12.9),
    ALUMINIUM(21.2);

    private final double ohmCircularMilsPerFoot;

    Metal(double ohmCircularMilsPerFoot) {
      this.ohmCircularMilsPerFoot = ohmCircularMilsPerFoot;
    }
  }

  /**
   * A run of wire.
   *
   * @param gauge American wire gauge: 4 is #4, 0 is 1/0, -3 is 4/0
   * @param length of the run, one way, above zero
   */
  public record Wire(Metal metal, int gauge, Length length) {
    public Wire {
      if (!(length.metres() > 0)) {
        throw new IllegalArgumentException("A run of wire needs a length above zero");
      }
      if (gauge > THINNEST || gauge < THICKEST) {
        throw new IllegalArgumentException(
            "Wire gauge " + gauge + " is not between 14 and -3, which is 4/0");
      }
    }

    /** Area by the gauge's definition: 5 mil at 36, 460 mil at 4/0, a constant ratio between. */
    public double circularMils() {
      double mils = 5 * Math.pow(92, (36 - gauge) / 39.0);
      return mils * mils;
    }
  }

  public MotorSupply {
    if (!(volts.volts() > 0)) {
      throw new IllegalArgumentException("A supply needs volts above zero");
    }
  }

  /** Amps at full load. The nameplate knows better. */
  public Computed<Current> running(Power shaft, Fraction efficiency, Fraction powerFactor) {
    double amps =
        shaft.watts() / (volts.volts() * phases.amps * efficiency.ratio() * powerFactor.ratio());
    return Computed.of(
        Current.ofAmps(amps),
        () ->
            Working.of(
                "Amps at full load",
                "I",
                "745.7*P/(U*f*eta*cf)",
                Unit.AMPERE,
                AMPS,
                Term.of("P", "power at the shaft", shaft, Unit.HORSEPOWER),
                Term.of("U", "voltage", volts, Unit.VOLT),
                Term.number("f", "1, or root three for three phases", phases.amps),
                Term.number("eta", "efficiency of the motor", efficiency.ratio()),
                Term.number("cf", "power factor", powerFactor.ratio())));
  }

  /** Amps as it starts across the line. */
  public static Computed<Current> starting(Current running) {
    return Computed.of(
        Current.ofAmps(STARTING * running.amps()),
        () ->
            Working.of(
                "Amps as it starts",
                "Is",
                "6*I",
                Unit.AMPERE,
                START,
                Term.of("I", "amps at full load", running, Unit.AMPERE)));
  }

  /** Part of the voltage that is lost in the wire. */
  public Computed<Fraction> drop(Wire wire, Current amps) {
    double ohmMils = wire.metal().ohmCircularMilsPerFoot;
    double lost =
        phases.wires * ohmMils * amps.amps() * wire.length().toFeet() / wire.circularMils();
    return Computed.of(
        Fraction.ofPercent(100 * lost / volts.volts()),
        () ->
            Working.of(
                "Voltage lost in the wire",
                "d",
                "100*w*K*I*L/(CM*U)",
                Unit.PERCENT,
                DROP,
                Term.number("w", "2, or root three for three phases", phases.wires),
                Term.number("K", "ohms of a foot of one circular mil", ohmMils),
                Term.of("I", "amps", amps, Unit.AMPERE),
                Term.of("L", "length of the run, one way", wire.length(), Unit.FOOT),
                Term.number("CM", "area of the wire in circular mils", wire.circularMils()),
                Term.of("U", "voltage", volts, Unit.VOLT)));
  }
}
