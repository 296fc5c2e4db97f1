package tankyard.app.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import tankyard.app.edit.Change;
import tankyard.app.field.Fields;
import tankyard.app.field.Part;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.OwnPipe;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;

/** Pipes that no catalogue lists, a section each; lines can be laid with them. */
final class OwnPipeSections {
  private static final Part<Lease, List<OwnPipe>> ALL = Part.of(Lease.class, "ownPipes");

  private OwnPipeSections() {}

  static void fill(SheetForm sheet) {
    List<OwnPipe> pipes = ALL.in(sheet.lease());
    for (int i = 0; i < pipes.size(); i++) {
      fill(sheet, i, pipes.get(i));
    }
    sheet.form.section(pipes.isEmpty() ? "Pipes no catalogue lists" : "");
    sheet
        .form
        .adder(
            "own-pipe-add",
            "Add a pipe",
            "Its name, a comma, its inside diameter. Lines can then be laid with it.",
            "yard pipe, 1.9 in",
            OwnPipeSections::read)
        .wide();
  }

  private static void fill(SheetForm sheet, int index, OwnPipe pipe) {
    sheet.form.section("Own pipe " + (index + 1));
    String prefix = "own-pipe-" + (index + 1);
    Fields<Lease, OwnPipe> fields =
        sheet.form.on(prefix, ALL.then(Part.item(index)), OwnPipe.class);
    fields.text("name", "Name", "As it stands in the list of pipes.").required().wide();
    inches(fields, "bore", "Inside diameter", "What the liquid runs through.");
    inches(fields, "outside", "Outside diameter", "For the fittings that go on it.");
    inches(fields, "roughness", "Roughness", "Old pipe is rougher than new, and loses more.");
    fields
        .amount("ratingWater", "Stands with water", "At 73 °F; hot pipe stands less.")
        .assumedFrom(lease -> "not checked");
    fields
        .amount("ratingOil", "Stands with oil", "At 73 °F; oil weakens some plastics.")
        .assumedFrom(lease -> "not checked");
    sheet.form.action(
        sheet.button(
            prefix + "-remove",
            "Remove",
            "Take " + pipe.name() + " out of the list",
            lease -> Change.of("Take out a pipe", l -> without(l, pipe.id()))));
  }

  private static void inches(
      Fields<Lease, OwnPipe> fields, String component, String label, String why) {
    fields.amount(component, label, why).unit(Unit.INCH, Unit.MILLIMETRE);
  }

  private static UnaryOperator<Lease> read(String typed) {
    int comma = typed.lastIndexOf(',');
    if (comma < 1 || typed.substring(0, comma).isBlank()) {
      throw new IllegalArgumentException(
          "\""
              + typed
              + "\" is no pipe. A name, a comma and an inside diameter: yard pipe, 1.9 in.");
    }
    String name = typed.substring(0, comma).strip();
    Length bore =
        new Length(AmountText.parse(typed.substring(comma + 1), Dimension.LENGTH, Unit.INCH));
    return lease -> {
      List<OwnPipe> more = new ArrayList<>(ALL.in(lease));
      more.add(
          new OwnPipe(
              freeId(more),
              name,
              bore,
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty()));
      return ALL.with(lease, List.copyOf(more));
    };
  }

  private static String freeId(List<OwnPipe> pipes) {
    return IntStream.iterate(1, n -> n + 1)
        .mapToObj(n -> "own-" + n)
        .filter(id -> pipes.stream().noneMatch(p -> p.id().equals(id)))
        .findFirst()
        .orElseThrow();
  }

  private static Lease without(Lease lease, String id) {
    return ALL.with(lease, ALL.in(lease).stream().filter(p -> !p.id().equals(id)).toList());
  }
}
