package tankyard.engine.working;

import com.ezylang.evalex.EvaluationException;
import com.ezylang.evalex.Expression;
import com.ezylang.evalex.parser.ParseException;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Unit;

/**
 * How a number came about: a formula, what was put in, where it comes from, and what came out.
 *
 * <p>The printed result is worked out from the printed inputs, so that anyone with a calculator
 * gets the same digits. Formulas use {@code + - * / ^}, brackets, {@code pi}, {@code sqrt}, {@code
 * log10}, {@code min}, {@code max}; symbols may not differ by case alone.
 *
 * @param title what is worked out, in words
 * @param symbol its letter
 * @param formula in the terms' symbols
 * @param terms what is put in
 * @param unit of the result
 * @param from workings of the terms that were themselves worked out
 */
public record Working(
    String title,
    String symbol,
    String formula,
    List<Term> terms,
    Unit unit,
    Source source,
    List<Working> from) {

  /** Results of a working are printed to this many significant figures. */
  private static final int FIGURES = 4;

  public Working {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(formula, "formula");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(source, "source");
    terms = List.copyOf(terms);
    from = List.copyOf(from);
    long distinct = terms.stream().map(t -> t.symbol().toLowerCase(Locale.ROOT)).distinct().count();
    if (distinct != terms.size()) {
      throw new IllegalArgumentException("Two terms share a symbol in: " + formula);
    }
  }

  public static Working of(
      String title, String symbol, String formula, Unit unit, Source source, Term... terms) {
    return new Working(title, symbol, formula, List.of(terms), unit, source, List.of());
  }

  /** The same, naming the workings its inputs came from. */
  public Working from(List<Working> workings) {
    return new Working(title, symbol, formula, terms, unit, source, workings);
  }

  /** The result from the printed inputs, in {@link #unit()}. */
  public double value() {
    try {
      Expression expression = new Expression(formula);
      for (Term term : terms) {
        expression.with(term.symbol(), new java.math.BigDecimal(term.digits()));
      }
      return expression.evaluate().getNumberValue().doubleValue();
    } catch (EvaluationException | ParseException e) {
      throw new IllegalStateException("The formula \"" + formula + "\" can't be worked out", e);
    }
  }

  public String digits() {
    return Figures.significant(value(), FIGURES);
  }

  /** For example {@code dp = SG*(Q/Cv)^2 = 1.169 psi}. */
  public String line() {
    String withUnit = unit.symbol().isEmpty() ? digits() : digits() + " " + unit.symbol();
    return symbol + " = " + formula + " = " + withUnit;
  }
}
