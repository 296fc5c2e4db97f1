package tankyard.app.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.app.edit.Change;
import tankyard.app.edit.Naming;
import tankyard.app.field.Fields;
import tankyard.app.field.Part;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.DesignCase.Running;
import tankyard.engine.lease.DesignCase.Season;
import tankyard.engine.lease.Lease;
import tankyard.engine.units.Unit;

/** The design cases, a section each. */
final class CaseSections {
  private static final Part<Lease, List<DesignCase>> ALL = Part.of(Lease.class, "cases");

  private CaseSections() {}

  static void fill(SheetForm sheet) {
    List<DesignCase> cases = sheet.lease().cases();
    for (int i = 0; i < cases.size(); i++) {
      fill(sheet, i, cases.get(i));
    }
    sheet
        .form
        .section("")
        .action(
            sheet.button(
                "case-add",
                "Add a case",
                "Another set of circumstances the battery must work in",
                lease -> Change.of("Add a case", CaseSections::added)));
  }

  private static void fill(SheetForm sheet, int index, DesignCase designCase) {
    sheet.form.section("Case " + (index + 1));
    String prefix = "case-" + (index + 1);
    Fields<Lease, DesignCase> fields =
        sheet.form.on(prefix, ALL.then(Part.item(index)), DesignCase.class);
    fields.text("name", "Name", "Stands at the head of its column in every table.").required();
    fields.oneOf(
        Season.class, "season", "Season", "Which ground temperature holds.", Season::words);
    fields.oneOf(
        Running.class,
        "running",
        "Wells run at",
        "After a power cut all wells start together.",
        Running::words);
    fields
        .amount("oil", "Oil, today's ×", "1.5 is half as much again.")
        .unit(Unit.ONE, Unit.ONE)
        .assumed("1");
    fields
        .amount("water", "Water, today's ×", "Old leases make more water every year.")
        .unit(Unit.ONE, Unit.ONE)
        .assumed("1");
    fields
        .amount(
            "sharedSurge",
            "Strokes met on shared lines",
            "3 takes every stroke to peak at once on lines of several wells; they rarely do.")
        .unit(Unit.ONE, Unit.ONE)
        .assumed("1");
    if (sheet.lease().cases().size() > 1) {
      sheet.form.action(
          sheet.button(
              prefix + "-remove",
              "Remove",
              "Take out the case " + designCase.name(),
              lease -> Change.of("Take out a case", l -> without(l, designCase.id()))));
    }
  }

  private static Lease added(Lease lease) {
    List<DesignCase> more = new ArrayList<>(lease.cases());
    more.add(
        new DesignCase(
            Naming.nextId(lease, "C"),
            "Case " + (lease.cases().size() + 1),
            Season.WINTER,
            Running.AVERAGE,
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
    return lease.withCases(more);
  }

  private static Lease without(Lease lease, String id) {
    return lease.withCases(lease.cases().stream().filter(c -> !c.id().equals(id)).toList());
  }
}
