package tankyard.app.sheet;

import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Practice;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Thing;
import tankyard.engine.study.Defaults;
import tankyard.engine.study.LeaseGround;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Length;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.UnitSystem;

/** What is taken while a field is empty, in the words that stand in the field. */
final class Assumed {
  private Assumed() {}

  static String of(Quantity value) {
    return AmountText.print(value.typed());
  }

  /** From the lease's practice where it says so, else the study's default. */
  static <Q extends Quantity> String fromPractice(Optional<Q> practice, Q fallback) {
    return practice.map(p -> "practice: " + of(p)).orElse(of(fallback) + " assumed");
  }

  static String depth(Lease lease) {
    return fromPractice(lease.practice().depth(), Defaults.DEPTH);
  }

  static String load(Lease lease) {
    Practice practice = lease.practice();
    return fromPractice(practice.load(), Defaults.LOAD);
  }

  static String switchHeight(Tank tank) {
    double feet = tank.overflowHeight().toFeet() - Defaults.SWITCH_BELOW_LIP.toFeet();
    return UnitSystem.FIELD.print(Length.ofFeet(feet), 4) + " assumed";
  }

  static String pumpOn(Tank tank) {
    double feet = tank.overflowHeight().toFeet() * Defaults.PUMP_ON_SHARE;
    return UnitSystem.FIELD.print(Length.ofFeet(feet), 4) + " assumed";
  }

  static String ground(Lease lease, String thingId, UnitSystem units) {
    Optional<Thing> thing = lease.thing(thingId);
    if (thing.isEmpty()) {
      return "";
    }
    var height = LeaseGround.of(lease).metresAt(thing.get().at());
    return height.isEmpty()
        ? "no height known"
        : "map: " + units.print(height.getAsDouble(), Dimension.ELEVATION, 4);
  }
}
