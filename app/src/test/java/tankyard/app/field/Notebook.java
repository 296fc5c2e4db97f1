package tankyard.app.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Time;
import tankyard.engine.units.UnitSystem;

/** A small whole to be edited by the tests of this package, and a host that keeps it. */
final class Notebook implements FormHost<Notebook.Page> {
  record Page(
      String name, LiquidRate oil, Optional<Time> runs, Length bore, int joints, Colour colour) {}

  enum Colour {
    RED,
    BLUE
  }

  Page page =
      new Page(
          "Page 1",
          LiquidRate.ofBarrelsPerDay(3),
          Optional.empty(),
          Length.ofFeet(12),
          4,
          Colour.RED);
  final List<String> names = new ArrayList<>();
  final List<String> keys = new ArrayList<>();
  final Drafts drafts = new Drafts();
  UnitSystem units = UnitSystem.FIELD;
  Form<Page> form = build();

  Form<Page> build() {
    FormBuilder<Page> builder = new FormBuilder<>(this, drafts, "page-1", () -> "Page 1");
    Part<Page, Page> whole = new Part<>(p -> p, (p, q) -> q);
    builder.section("Numbers");
    Fields<Page, Page> fields = builder.on("page", whole, Page.class);
    fields.text("name", "Name", "What the crew calls it.").required();
    fields.amount("oil", "Oil", "Day's average; every line follows it.");
    fields
        .amount("runs", "Runs", "Hours a day; the rate while running follows it.")
        .assumed("24 h");
    fields
        .amount("bore", "Bore", "Inside diameter.")
        .unit(tankyard.engine.units.Unit.INCH, tankyard.engine.units.Unit.MILLIMETRE);
    fields.count("joints", "Joints", "How many joints.", 1, 99);
    fields.oneOf(Colour.class, "colour", "Colour", "Of the paint.", c -> c.name().toLowerCase());
    form = builder.build();
    form.show(page);
    return form;
  }

  TypedEntry<Page> typed(String id) {
    return (TypedEntry<Page>) form.entry(id).orElseThrow();
  }

  void type(String id, String text) {
    typed(id).textProperty().set(text);
    typed(id).commit();
  }

  @Override
  public void change(String name, String mergeKey, UnaryOperator<Page> change) {
    names.add(name);
    keys.add(mergeKey);
    page = change.apply(page);
    form.show(page);
  }

  @Override
  public UnitSystem units() {
    return units;
  }
}
