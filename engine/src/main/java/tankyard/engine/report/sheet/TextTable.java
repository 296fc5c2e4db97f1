package tankyard.engine.report.sheet;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.report.doc.Block;

/** Lays a table out in columns that line up: words to the left, numbers to the right. */
final class TextTable {
  private static final int GAP = 2;

  /** A head is broken into lines about this wide, where its cells are narrower. */
  private static final int HEAD = 10;

  private final Block.Table table;
  private final int page;
  private final int[] widths;

  TextTable(Block.Table table, int page) {
    this.table = table;
    this.page = page;
    this.widths = widths();
  }

  String print() {
    StringBuilder out = new StringBuilder();
    if (!table.title().isEmpty()) {
      out.append(Wrap.hanging("", table.title(), page));
    }
    print(table.columns().stream().map(Block.Column::head).toList(), true, out);
    List<String> rules = new ArrayList<>();
    for (int width : widths) {
      rules.add("-".repeat(width));
    }
    print(rules, true, out);
    table.rows().forEach(row -> print(row, false, out));
    return out.toString();
  }

  /** As wide as the widest cell; then heads of numbers, then words give way for the page. */
  private int[] widths() {
    int[] wanted = new int[table.columns().size()];
    int[] least = new int[wanted.length];
    for (int i = 0; i < wanted.length; i++) {
      int column = i;
      String head = table.columns().get(i).head();
      boolean numbers = table.columns().get(i).numbers();
      int cells = table.rows().stream().mapToInt(r -> r.get(column).length()).max().orElse(0);
      int words =
          table.rows().stream().mapToInt(r -> Wrap.longestWord(r.get(column))).max().orElse(0);
      int headWord = Wrap.longestWord(head);
      wanted[i] = Math.max(Math.max(cells, headWord), Math.min(head.length(), HEAD));
      least[i] = Math.max(numbers ? cells : words, headWord);
    }
    shrink(wanted, least, true);
    shrink(wanted, least, false);
    return wanted;
  }

  /** Takes from the widest, one letter at a time, so that the widest columns end up alike. */
  private void shrink(int[] wanted, int[] least, boolean numbers) {
    while (total(wanted) > page) {
      int widest = -1;
      for (int i = 0; i < wanted.length; i++) {
        boolean canGive = wanted[i] > least[i] && table.columns().get(i).numbers() == numbers;
        if (canGive && (widest < 0 || wanted[i] >= wanted[widest])) {
          widest = i;
        }
      }
      if (widest < 0) {
        return;
      }
      wanted[widest]--;
    }
  }

  private static int total(int[] widths) {
    int sum = GAP * (widths.length - 1);
    for (int width : widths) {
      sum += width;
    }
    return sum;
  }

  /** One row; heads stand on the rule, cells hang from their first line. */
  private void print(List<String> cells, boolean onRule, StringBuilder out) {
    List<List<String>> wrapped = new ArrayList<>();
    int height = 1;
    for (int i = 0; i < widths.length; i++) {
      List<String> lines = Wrap.lines(cells.get(i), Math.max(1, widths[i]));
      wrapped.add(lines);
      height = Math.max(height, lines.size());
    }
    for (int line = 0; line < height; line++) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        int skip = onRule ? height - wrapped.get(i).size() : 0;
        int at = line - skip;
        String cell = at >= 0 && at < wrapped.get(i).size() ? wrapped.get(i).get(at) : "";
        text.append(i == 0 ? "" : " ".repeat(GAP)).append(padded(cell, i));
      }
      out.append(text.toString().stripTrailing()).append('\n');
    }
  }

  private String padded(String cell, int column) {
    String blanks = " ".repeat(Math.max(0, widths[column] - cell.length()));
    return table.columns().get(column).numbers() ? blanks + cell : cell + blanks;
  }
}
