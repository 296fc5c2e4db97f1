package tankyard.app.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.app.field.Fields;
import tankyard.app.field.Part;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MotorDriven;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Wire;
import tankyard.engine.units.Amount;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Length;

/** The amps and the wire of a motor, on the sheet of what it drives. */
final class MotorFields {
  private MotorFields() {}

  static boolean hasWire(Thing thing) {
    return wireOf(thing).isPresent();
  }

  static <T extends Record & MotorDriven> void fill(
      SheetForm sheet, Fields<Lease, T> fields, String prefix, String id, Class<T> kind) {
    fields
        .amount("motorAmps", "Its amps", "At full load, on its nameplate: wire is sized by them.")
        .assumedFrom(lease -> "by its power");
    Part<T, Optional<Wire>> wire = Part.of(kind, "wire");
    fields.choice(
        "wire",
        "Wire",
        "From the nearest power pole. Thin and long, it takes the motor's voltage.",
        wire,
        lease -> wires(lease, id),
        w -> w.map(Wire::words).orElse("not known"));
    if (sheet.lease().thing(id).filter(MotorFields::hasWire).isPresent()) {
      sheet
          .form
          .amount(
              prefix + "-wire-length",
              "Run of wire",
              "One way, from the pole to the motor.",
              length(LeasePlaces.thing(id, kind), wire),
              Dimension.LENGTH,
              true)
          .assumedFrom(lease -> "as the map says");
    }
  }

  private static <T extends Record & MotorDriven> Part<Lease, Optional<Amount>> length(
      Part<Lease, T> thing, Part<T, Optional<Wire>> wire) {
    return new Part<>(
        lease -> wire.in(thing.in(lease)).flatMap(Wire::length).map(Length::typed),
        (lease, typed) -> {
          T before = thing.in(lease);
          Optional<Wire> other =
              wire.in(before).map(w -> new Wire(w.gauge(), w.metal(), typed.map(Length::new)));
          return thing.with(lease, wire.with(before, other));
        });
  }

  /** Every gauge in both metals; the length that was typed stays. */
  private static List<Optional<Wire>> wires(Lease lease, String id) {
    Optional<Length> length = lease.thing(id).flatMap(MotorFields::wireOf).flatMap(Wire::length);
    List<Optional<Wire>> wires = new ArrayList<>();
    wires.add(Optional.empty());
    for (Wire.Metal metal : Wire.Metal.values()) {
      for (Wire.Gauge gauge : Wire.Gauge.values()) {
        wires.add(Optional.of(new Wire(gauge, metal, length)));
      }
    }
    return wires;
  }

  private static Optional<Wire> wireOf(Thing thing) {
    return thing instanceof MotorDriven driven ? driven.wire() : Optional.empty();
  }
}
