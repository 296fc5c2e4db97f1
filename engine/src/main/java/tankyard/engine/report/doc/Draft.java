package tankyard.engine.report.doc;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Working;

/** A report while its sections are written: what they draw on and what they leave behind. */
final class Draft {
  private final Results results;
  private final UnitSystem units;
  private final WorkingBook book = new WorkingBook();
  private final List<Headline> headlines = new ArrayList<>();

  Draft(Results results, UnitSystem units) {
    this.results = results;
    this.units = units;
  }

  Results results() {
    return results;
  }

  UnitSystem units() {
    return units;
  }

  String nameOf(String id) {
    return results.nameOf(id);
  }

  /** The digits of a number, for a table. */
  String digits(Figure figure, Quantity quantity) {
    return figure.digits(quantity, units);
  }

  /** A number with its unit, for a sentence. */
  String words(Figure figure, Quantity quantity) {
    return figure.words(quantity, units, Rounding.NEAREST);
  }

  /** The head of a column with the unit its numbers are in: "box, psi". */
  String head(String words, Figure figure) {
    return words + ", " + figure.unit(units).symbol();
  }

  /** The digits of a headline number; its working goes to the appendix. */
  Shown headline(String what, Figure figure, Computed<?> computed) {
    return headline(what, figure, Rounding.NEAREST, computed);
  }

  Shown headline(String what, Figure figure, Rounding rounding, Computed<?> computed) {
    return headline(what, figure, rounding, computed.value(), computed.working());
  }

  Shown headline(String what, Figure figure, Rounding rounding, Quantity value, Working working) {
    int number = book.number(working);
    String digits = figure.digits(value.si(), units, rounding);
    headlines.add(
        new Headline(
            what, digits, figure.unit(units), figure.decimals(units), rounding, number, working));
    return new Shown(digits, figure.unit(units).symbol(), "[" + number + "]");
  }

  /** The mark of a working whose number is no quantity, such as money. */
  String mark(Working working) {
    return "[" + book.number(working) + "]";
  }

  /** A headline number as shown, and the mark of its working. */
  record Shown(String digits, String unit, String mark) {
    String words() {
      return digits + " " + unit + " " + mark;
    }
  }

  Report finish(String standing, List<Section> sections) {
    return new Report(
        results.lease().name(), results.date(), standing, sections, book.all(), headlines);
  }
}
