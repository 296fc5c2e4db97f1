package tankyard.app.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import tankyard.app.edit.Change;
import tankyard.app.field.Part;
import tankyard.app.field.RowsBuilder;
import tankyard.engine.lease.Fluids;
import tankyard.engine.lease.Fluids.MeasuredViscosity;
import tankyard.engine.lease.Lease;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Viscosity;

/** Measured viscosities of the oil. */
final class ViscosityRows {
  private static final Part<Lease, List<MeasuredViscosity>> ALL =
      Part.<Lease, Fluids>of(Lease.class, "fluids").then(Part.of(Fluids.class, "oilViscosity"));

  private ViscosityRows() {}

  static void fill(SheetForm sheet) {
    RowsBuilder<Lease> rows =
        sheet.form.rows("viscosity", "Oil viscosity, measured", "", "At", "Viscosity");
    int count = ALL.in(sheet.lease()).size();
    for (int i = 0; i < count; i++) {
      int index = i;
      rows.row(
          (i + 1) + ".",
          ALL.then(Part.item(i)),
          MeasuredViscosity.class,
          row -> {
            row.amount("temperature", "At", "The temperature it was measured at.");
            row.amount("viscosity", "Viscosity", "Cold oil is worth two lab points.");
          },
          sheet.does(lease -> Change.of("Take out a viscosity", l -> without(l, index))));
    }
    rows.whenEmpty("None: it is worked out from the gravity, which is poor for cold oil.").end();
    sheet.form.section("");
    sheet.form.adder(
        "viscosity-add",
        "Add a point",
        "Temperature, a comma, viscosity. Two points make a line over temperature.",
        "e.g. 40 °F, 120 cP",
        ViscosityRows::read);
  }

  private static UnaryOperator<Lease> read(String typed) {
    String[] parts = typed.split("[,;]");
    if (parts.length != 2) {
      throw new IllegalArgumentException(
          "\"" + typed + "\" is no point. A temperature, a comma and a viscosity: 40 F, 120 cP.");
    }
    MeasuredViscosity point =
        new MeasuredViscosity(
            new Temperature(AmountText.parse(parts[0], Dimension.TEMPERATURE, Unit.FAHRENHEIT)),
            new Viscosity(AmountText.parse(parts[1], Dimension.VISCOSITY, Unit.CENTIPOISE)));
    return lease -> {
      List<MeasuredViscosity> more = new ArrayList<>(ALL.in(lease));
      more.add(point);
      return ALL.with(lease, List.copyOf(more));
    };
  }

  private static Lease without(Lease lease, int index) {
    List<MeasuredViscosity> fewer = new ArrayList<>(ALL.in(lease));
    fewer.remove(index);
    return ALL.with(lease, List.copyOf(fewer));
  }
}
