package tankyard.app.sheet;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import tankyard.app.edit.Edit;
import tankyard.app.edit.EditRefusedException;
import tankyard.app.edit.LeaseStore;
import tankyard.app.field.Drafts;
import tankyard.app.field.Fields;
import tankyard.app.field.Form;
import tankyard.app.field.FormAction;
import tankyard.app.field.FormBuilder;
import tankyard.app.field.FormHost;
import tankyard.app.field.Part;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.CatalogItem;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Thing;
import tankyard.engine.units.Dimension;

/** What the sheets of all kinds have in common while one is put together. */
final class SheetForm {
  final FormBuilder<Lease> form;
  final Catalog catalog;
  private final FormHost<Lease> host;
  private final LeaseStore store;
  private final Consumer<String> refused;

  SheetForm(
      FormHost<Lease> host,
      Drafts drafts,
      LeaseStore store,
      Consumer<String> refused,
      Catalog catalog,
      String subject,
      Supplier<String> name) {
    this.form = new FormBuilder<>(host, drafts, subject, name);
    this.host = host;
    this.store = store;
    this.refused = refused;
    this.catalog = catalog;
  }

  Lease lease() {
    return store.lease();
  }

  Form<Lease> build() {
    return form.build();
  }

  /** The fields of a thing, with its name and status begun. */
  <T extends Record & Thing> Fields<Lease, T> thing(String prefix, String id, Class<T> kind) {
    Fields<Lease, T> fields = form.on(prefix, LeasePlaces.thing(id, kind), kind);
    fields
        .text("name", "Name", "What the crew calls it; it stands on the map and in every list.")
        .required()
        .wide();
    status(fields);
    return fields;
  }

  <S extends Record> void status(Fields<Lease, S> fields) {
    fields.oneOf(
        Status.class,
        "status",
        "Status",
        "New things are bought, what is there is not, and what goes is only taken out.",
        Status::words);
  }

  /** Where a thing stands. */
  void place(String prefix, String id) {
    form.section("Place");
    form.amount(
        prefix + "-east",
        "East of the datum",
        "Where it stands on the map; dragging it does the same.",
        LeasePlaces.east(id),
        Dimension.LENGTH,
        false);
    form.amount(
        prefix + "-north",
        "North of the datum",
        "Where it stands on the map; dragging it does the same.",
        LeasePlaces.north(id),
        Dimension.LENGTH,
        false);
  }

  /** The height of the ground, with what the map says where it was not shot. */
  <S extends Record> void ground(Fields<Lease, S> fields, String id) {
    fields
        .amount(
            "ground",
            "Ground here",
            "Every foot is about half a psi: shoot it where it matters, or leave it to the map.")
        .assumedFrom(lease -> Assumed.ground(lease, id, host.units()));
  }

  /** A catalogue item, or none; choosing one fills in what it says. */
  <S extends Record, I extends CatalogItem> void model(
      Fields<Lease, S> fields,
      String label,
      String why,
      Class<I> kind,
      Function<I, Boolean> fits,
      Part<S, Optional<String>> part) {
    List<Optional<String>> choices =
        java.util.stream.Stream.concat(
                java.util.stream.Stream.of(Optional.<String>empty()),
                catalog.list(kind).stream().filter(fits::apply).map(i -> Optional.of(i.id())))
            .toList();
    fields.choice("model", label, why, part, lease -> choices, this::itemWords).wide();
  }

  private String itemWords(Optional<String> id) {
    return id.map(i -> catalog.item(i).map(CatalogItem::name).orElse(i + " (not in the catalogue)"))
        .orElse("own sizes");
  }

  /** A button that makes one edit. */
  FormAction button(String id, String words, String why, Function<Lease, Edit> edit) {
    return new FormAction(id, words, why, does(edit));
  }

  Runnable does(Function<Lease, Edit> edit) {
    return () -> {
      try {
        store.edit(edit.apply(store.lease()));
      } catch (EditRefusedException e) {
        refused.accept(e.getMessage());
      }
    };
  }
}
