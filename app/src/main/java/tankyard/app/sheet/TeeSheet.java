package tankyard.app.sheet;

import tankyard.app.field.Fields;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Tee;

/** The fields of a tee. */
final class TeeSheet {
  private TeeSheet() {}

  static void fill(SheetForm sheet, String id) {
    sheet.form.section("");
    Fields<Lease, Tee> tee = sheet.thing("tee", id, Tee.class);
    sheet.place("tee", id);
    sheet.ground(tee, id);
  }
}
