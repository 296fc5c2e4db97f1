package tankyard.engine.report.sheet;

import java.util.Locale;
import tankyard.engine.report.doc.Block;
import tankyard.engine.report.doc.Report;
import tankyard.engine.report.doc.Section;

/** Prints a report as plain text, 100 columns wide. */
public final class PlainSheet {
  /** Columns of a page. */
  public static final int WIDTH = 100;

  private final StringBuilder out = new StringBuilder();

  private PlainSheet() {}

  public static String print(Report report) {
    PlainSheet sheet = new PlainSheet();
    sheet.front(report);
    sheet.workings(report);
    sheet.close(report);
    return sheet.out.toString();
  }

  /** The same without the workings, for a screen. */
  public static String printShort(Report report) {
    PlainSheet sheet = new PlainSheet();
    sheet.front(report);
    sheet.close(report);
    return sheet.out.toString();
  }

  private void front(Report report) {
    head(report);
    report.sections().forEach(this::section);
  }

  private void workings(Report report) {
    if (report.workings().isEmpty()) {
      return;
    }
    heading("Workings");
    out.append(
        Wrap.hanging(
            "",
            "Each number marked [n] above, from its printed inputs: put them into the formula and"
                + " the printed digits come out.",
            WIDTH));
    report.workings().forEach(w -> out.append('\n').append(WorkingText.print(w, WIDTH)));
  }

  private void close(Report report) {
    out.append('\n').append(Wrap.hanging("", report.standing(), WIDTH));
  }

  private void head(Report report) {
    String date = report.date().toString();
    int room = WIDTH - date.length() - 2;
    String title = report.title().length() <= room ? report.title() : "";
    out.append("=".repeat(WIDTH)).append('\n');
    if (title.isEmpty()) {
      out.append(Wrap.hanging("", report.title(), WIDTH));
    }
    out.append(title)
        .append(" ".repeat(WIDTH - title.length() - date.length()))
        .append(date)
        .append('\n');
    out.append(Wrap.hanging("", report.standing(), WIDTH));
    out.append("=".repeat(WIDTH)).append('\n');
  }

  private void heading(String title) {
    String shown = title.toUpperCase(Locale.ROOT);
    out.append('\n').append(shown).append('\n');
    out.append("-".repeat(Math.min(WIDTH, shown.length()))).append('\n');
  }

  private void section(Section section) {
    heading(section.title());
    boolean first = true;
    for (Block block : section.blocks()) {
      if (!first && !(block instanceof Block.Points)) {
        out.append('\n');
      }
      block(block);
      first = false;
    }
  }

  private void block(Block block) {
    if (block instanceof Block.Words words) {
      out.append(Wrap.hanging("", words.text(), WIDTH));
    } else if (block instanceof Block.Points points) {
      points.points().forEach(p -> out.append(Wrap.hanging("  - ", p, WIDTH)));
    } else if (block instanceof Block.Table table) {
      out.append(new TextTable(table, WIDTH).print());
    }
  }
}
