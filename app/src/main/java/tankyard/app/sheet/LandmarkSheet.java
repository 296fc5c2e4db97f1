package tankyard.app.sheet;

import tankyard.app.field.Fields;
import tankyard.engine.lease.Landmark;
import tankyard.engine.lease.Lease;

/** The fields of a landmark. */
final class LandmarkSheet {
  private LandmarkSheet() {}

  static void fill(SheetForm sheet, Landmark landmark) {
    sheet.form.section("");
    Fields<Lease, Landmark> fields = sheet.thing("landmark", landmark.id(), Landmark.class);
    fields.oneOf(
        Landmark.What.class,
        "what",
        "It is a",
        "A house, pond or water well covers the ground inside its corners; the others are ways.",
        Landmark.What::words);
    fields
        .amount(
            "setback",
            "Keep away by",
            "Tanks and vessels, shell to nearest side. Look up the local rule; it governs.")
        .assumedFrom(lease -> "not checked");
    CornerRows.fill(sheet, landmark);
  }
}
