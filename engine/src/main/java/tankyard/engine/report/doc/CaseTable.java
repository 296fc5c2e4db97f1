package tankyard.engine.report.doc;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import tankyard.engine.study.CaseResult;

/** A table with one column for each design case, side by side; many cases make several tables. */
final class CaseTable<T> {
  /** More columns than these don't fit a page beside the others. */
  private static final int CASES_A_TABLE = 6;

  private final Draft draft;
  private final List<T> things;
  private final List<Block.Column> before = new ArrayList<>();
  private final List<Function<T, String>> beforeCells = new ArrayList<>();
  private final List<Block.Column> after = new ArrayList<>();
  private final List<Function<T, String>> afterCells = new ArrayList<>();

  CaseTable(Draft draft, List<T> things) {
    this.draft = draft;
    this.things = things;
  }

  CaseTable<T> before(Block.Column column, Function<T, String> cell) {
    before.add(column);
    beforeCells.add(cell);
    return this;
  }

  CaseTable<T> after(Block.Column column, Function<T, String> cell) {
    after.add(column);
    afterCells.add(cell);
    return this;
  }

  /** The tables, with what a thing shows in a case. */
  List<Block> with(String title, BiFunction<T, CaseResult, String> cell) {
    List<CaseResult> cases = draft.results().cases();
    List<Block> tables = new ArrayList<>();
    for (int from = 0; from < cases.size(); from += CASES_A_TABLE) {
      List<CaseResult> some = cases.subList(from, Math.min(cases.size(), from + CASES_A_TABLE));
      tables.add(table(from == 0 ? title : title + ", continued", some, cell));
    }
    return tables;
  }

  private Block table(
      String title, List<CaseResult> cases, BiFunction<T, CaseResult, String> cell) {
    List<Block.Column> columns = new ArrayList<>(before);
    cases.forEach(c -> columns.add(Block.Column.number(c.designCase().name())));
    columns.addAll(after);
    List<List<String>> rows = new ArrayList<>();
    for (T thing : things) {
      List<String> row = new ArrayList<>();
      beforeCells.forEach(f -> row.add(f.apply(thing)));
      cases.forEach(c -> row.add(cell.apply(thing, c)));
      afterCells.forEach(f -> row.add(f.apply(thing)));
      rows.add(row);
    }
    return new Block.Table(title, columns, rows);
  }
}
