package tankyard.app.sheet;

import tankyard.app.example.Desk;
import tankyard.app.field.ChoiceEntry;
import tankyard.app.field.Entry;
import tankyard.app.field.FormAction;
import tankyard.app.field.Rows;
import tankyard.app.field.TypedEntry;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Well;

/** A desk with the small lease on it, its sheet, and a hand that types and chooses in it. */
abstract class SheetFixture {
  final Desk desk = new Desk();
  final SheetViewModel model = SheetPictures.model(desk);

  Lease lease() {
    return desk.store.lease();
  }

  Well well(String id) {
    return (Well) lease().thing(id).orElseThrow();
  }

  Entry<Lease> entry(String id) {
    return model.pageProperty().get().form().entry(id).orElseThrow();
  }

  TypedEntry<Lease> typed(String id) {
    return (TypedEntry<Lease>) entry(id);
  }

  void type(String id, String text) {
    typed(id).textProperty().set(text);
    typed(id).commit();
  }

  @SuppressWarnings("unchecked")
  <T> void choose(String id, T item) {
    ((ChoiceEntry<Lease, T>) entry(id)).choose(item);
  }

  FormAction action(String id) {
    return model.pageProperty().get().form().blocks().stream()
        .flatMap(
            block ->
                java.util.stream.Stream.concat(
                    block.actions().stream(),
                    block instanceof Rows<Lease> rows
                        ? rows.rows().stream().flatMap(row -> row.remove().stream())
                        : java.util.stream.Stream.empty()))
        .filter(a -> a.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
