package tankyard.app.sheet;

import java.util.List;
import tankyard.app.field.Form;
import tankyard.app.field.FormAction;
import tankyard.engine.lease.Lease;

/**
 * The inputs of whatever is picked.
 *
 * @param actions buttons at the foot
 */
record SheetPage(Form<Lease> form, List<FormAction> actions) {
  SheetPage {
    actions = List.copyOf(actions);
  }
}
