package tankyard.app.sheet;

import java.util.List;
import java.util.function.Supplier;
import tankyard.app.figures.CaseTable;
import tankyard.app.figures.Digits;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Working;

/**
 * What was worked out about whatever is picked.
 *
 * @param notices findings about it, worst first, in words
 * @param facts numbers that hold over all cases
 * @param table numbers by case
 * @param assumed values nobody typed
 */
record SheetResults(
    List<Notice> notices, List<WorkedFact> facts, CaseTable table, List<String> assumed) {

  /**
   * A finding in short.
   *
   * @param severity its word
   */
  record Notice(String severity, String words) {}

  /** A number with what it is. */
  record WorkedFact(String label, String text, String why, Supplier<Working> working) {
    static WorkedFact of(
        String label, Computed<?> value, Unit unit, Rounding rounding, String why) {
      String text = Digits.withUnit(unit, value.value().in(unit), rounding);
      return new WorkedFact(label, text, why, value::working);
    }
  }

  SheetResults {
    notices = List.copyOf(notices);
    facts = List.copyOf(facts);
    assumed = List.copyOf(assumed);
  }

  static SheetResults none() {
    return new SheetResults(List.of(), List.of(), CaseTable.empty(), List.of());
  }

  boolean isEmpty() {
    return facts.isEmpty() && table.sets().isEmpty();
  }
}
