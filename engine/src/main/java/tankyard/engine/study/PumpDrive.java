package tankyard.engine.study;

import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.Lease;
import tankyard.engine.pumps.PlungerPump;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Rotation;
import tankyard.engine.working.Computed;

/**
 * How an injection pump comes to its rate; the same in every case. Only where plungers and stroke
 * are typed.
 *
 * @param delivers at the speed that is typed, if one is
 * @param speed at which it delivers the rate that is typed
 * @param motorSheave pitch diameter of the sheave on the motor for that speed, where the pump's is
 *     typed
 */
public record PumpDrive(
    String pumpId,
    Optional<Computed<LiquidRate>> delivers,
    Computed<Rotation> speed,
    Optional<Computed<Length>> motorSheave) {

  /** One for each pump that stays and whose plungers are known. */
  public static List<PumpDrive> of(Lease lease) {
    return lease.injectionPumps().stream()
        .filter(pump -> pump.status().stays())
        .flatMap(pump -> of(pump).stream())
        .toList();
  }

  private static Optional<PumpDrive> of(InjectionPump pump) {
    if (pump.plunger().isEmpty() || pump.stroke().isEmpty()) {
      return Optional.empty();
    }
    PlungerPump plungers =
        new PlungerPump(
            pump.plungers().orElse(Defaults.PUMP_PLUNGERS).number(),
            pump.plunger().get(),
            pump.stroke().get(),
            pump.slip().orElse(Defaults.PUMP_SLIP));
    Computed<Rotation> speed = plungers.speed(pump.rate());
    Rotation motor = pump.motorSpeed().orElse(Defaults.MOTOR_SPEED);
    return Optional.of(
        new PumpDrive(
            pump.id(),
            pump.speed().map(plungers::rate),
            speed,
            pump.sheave().map(s -> PlungerPump.motorSheave(s, speed.value(), motor))));
  }
}
