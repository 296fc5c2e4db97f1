package tankyard.app.sheet;

import tankyard.app.field.Fields;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.PowerPole;

/** The fields of a power pole. */
final class PowerPoleSheet {
  private PowerPoleSheet() {}

  static void fill(SheetForm sheet, String id) {
    sheet.form.section("");
    Fields<Lease, PowerPole> pole = sheet.thing("pole", id, PowerPole.class);
    pole.amount(
        "volts", "Voltage", "Between the wires to the motors. Twice the volts, half the amps.");
    pole.oneOf(
        PowerPole.Phases.class,
        "phases",
        "Supply",
        "Ask the power company: three phases draw less through each wire.",
        PowerPole.Phases::words);
    sheet.place("pole", id);
    sheet.ground(pole, id);
  }
}
