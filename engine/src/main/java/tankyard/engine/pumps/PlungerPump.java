package tankyard.engine.pumps;

import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Rotation;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * A single-acting plunger pump: what its plungers sweep, less slip.
 *
 * @param plungers three in a triplex
 * @param slip share that leaks back past valves and packing
 */
public record PlungerPump(int plungers, Length plunger, Length stroke, Fraction slip) {
  private static final Source SWEPT = Source.definition("swept volume of the plungers");

  public PlungerPump {
    if (plungers < 1 || !(plunger.metres() > 0 && stroke.metres() > 0)) {
      throw new IllegalArgumentException("A pump needs plungers with a bore and a stroke");
    }
    if (!(slip.ratio() >= 0 && slip.ratio() < 1)) {
      throw new IllegalArgumentException(
          "Slip is a share between 0 and 100 %, not " + slip.toPercent() + " %");
    }
  }

  /** What one turn delivers. */
  public Computed<Volume> perTurn() {
    return Computed.of(
        Volume.ofBarrels(Unit.BARREL.fromSi(cubicMetresPerTurn())),
        () ->
            Working.of(
                "Delivered in one turn",
                "V",
                "n*pi/4*d^2*s*(1-x)/9702",
                Unit.BARREL,
                SWEPT,
                Term.number("n", "plungers", plungers),
                Term.of("d", "plunger", plunger, Unit.INCH),
                Term.of("s", "stroke", stroke, Unit.INCH),
                Term.number("x", "slip", slip.ratio())));
  }

  /** What it delivers at a speed. */
  public Computed<LiquidRate> rate(Rotation speed) {
    double perSecond = cubicMetresPerTurn() * speed.toRpm() / 60;
    return Computed.of(
        LiquidRate.ofBarrelsPerDay(Unit.BARREL_PER_DAY.fromSi(perSecond)),
        () ->
            Working.of(
                    "Rate of the pump",
                    "Q",
                    "1440*V*N",
                    Unit.BARREL_PER_DAY,
                    SWEPT,
                    Term.of("V", "delivered in one turn", perTurn().value(), Unit.BARREL),
                    Term.of("N", "speed", speed, Unit.RPM))
                .from(java.util.List.of(perTurn().working())));
  }

  /** The speed at which it delivers a rate. */
  public Computed<Rotation> speed(LiquidRate rate) {
    double turnsASecond = rate.cubicMetresPerSecond() / cubicMetresPerTurn();
    return Computed.of(
        Rotation.ofRpm(60 * turnsASecond),
        () ->
            Working.of(
                    "Speed of the pump",
                    "N",
                    "Q/(1440*V)",
                    Unit.RPM,
                    SWEPT,
                    Term.of("Q", "rate wanted", rate, Unit.BARREL_PER_DAY),
                    Term.of("V", "delivered in one turn", perTurn().value(), Unit.BARREL))
                .from(java.util.List.of(perTurn().working())));
  }

  /**
   * The sheave on the motor that turns the pump at a speed.
   *
   * @param onPump pitch diameter of the pump's sheave
   * @param pump speed wanted
   * @param motor speed of the motor, above zero
   */
  public static Computed<Length> motorSheave(Length onPump, Rotation pump, Rotation motor) {
    if (!(motor.toRpm() > 0)) {
      throw new IllegalArgumentException("A motor that stands turns no pump");
    }
    return Computed.of(
        Length.of(onPump.in(Unit.INCH) * pump.toRpm() / motor.toRpm(), Unit.INCH),
        () ->
            Working.of(
                "Sheave on the motor",
                "d",
                "B*N/M",
                Unit.INCH,
                Source.definition("the belt runs as fast over both sheaves; slip left out"),
                Term.of("B", "pitch diameter of the pump's sheave", onPump, Unit.INCH),
                Term.of("N", "speed of the pump", pump, Unit.RPM),
                Term.of("M", "speed of the motor", motor, Unit.RPM)));
  }

  private double cubicMetresPerTurn() {
    double d = plunger.metres();
    return plungers * Math.PI / 4 * d * d * stroke.metres() * (1 - slip.ratio());
  }
}
