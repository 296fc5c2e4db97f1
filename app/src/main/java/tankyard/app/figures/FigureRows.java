package tankyard.app.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Working;

/**
 * Turns results into rows of figures.
 *
 * @param <C> what there is one of for each column, for example a case's result of one well
 */
public final class FigureRows<C> {
  private final UnitSystem units;
  private final List<Optional<C>> columns;
  private final List<FigureRow> rows = new ArrayList<>();

  /**
   * Starts with no row.
   *
   * @param columns empty where the case has no such result
   */
  public FigureRows(UnitSystem units, List<Optional<C>> columns) {
    this.units = units;
    this.columns = List.copyOf(columns);
  }

  public List<FigureRow> rows() {
    return List.copyOf(rows);
  }

  /** A number with its working, in the unit system's unit. */
  public FigureRows<C> computed(
      String label, String why, Function<C, ? extends Computed<? extends Quantity>> of) {
    return computedIn(Optional.empty(), label, why, c -> Optional.of(of.apply(c)));
  }

  /** The same where a case may not have it. */
  public FigureRows<C> maybe(
      String label, String why, Function<C, ? extends Optional<? extends Computed<?>>> of) {
    return computedIn(Optional.empty(), label, why, of);
  }

  /** The same in a unit of its own, as minutes for the time in a vessel. */
  public FigureRows<C> maybeIn(
      Unit unit,
      String label,
      String why,
      Function<C, ? extends Optional<? extends Computed<?>>> of) {
    return computedIn(Optional.of(unit), label, why, of);
  }

  /** A number that has no working of its own. */
  public FigureRows<C> plain(
      String label, String why, Function<C, ? extends Optional<? extends Quantity>> of) {
    List<Optional<? extends Quantity>> found = new ArrayList<>();
    columns.forEach(column -> found.add(column.flatMap(of)));
    List<Optional<Supplier<Working>>> none =
        columns.stream().map(c -> Optional.<Supplier<Working>>empty()).toList();
    return add(Optional.empty(), label, why, found, none);
  }

  /** A bare number in a unit the engine has no type for. */
  public FigureRows<C> number(
      Unit unit, String label, String why, Function<C, Optional<Double>> of) {
    List<Optional<Double>> values = columns.stream().map(c -> c.flatMap(of)).toList();
    int decimals = Digits.decimals(unit, values.stream().flatMap(Optional::stream).toList());
    return words(
        label,
        unit.symbol(),
        why,
        values.stream()
            .map(v -> v.map(x -> Figures.grouped(x, decimals)).map(Figure::plain))
            .toList());
  }

  /** Words in place of a number. */
  public FigureRows<C> words(String label, String why, Function<C, Optional<String>> of) {
    return words(
        label, "", why, columns.stream().map(c -> c.flatMap(of).map(Figure::plain)).toList());
  }

  private FigureRows<C> words(
      String label, String unit, String why, List<Optional<Figure>> figures) {
    if (figures.stream().allMatch(Optional::isEmpty)) {
      return this; // the row would be all dashes
    }
    rows.add(
        new FigureRow(
            label, unit, why, figures.stream().map(f -> f.orElse(Figure.unknown())).toList()));
    return this;
  }

  private FigureRows<C> computedIn(
      Optional<Unit> unit,
      String label,
      String why,
      Function<C, ? extends Optional<? extends Computed<?>>> of) {
    List<Optional<? extends Quantity>> values = new ArrayList<>();
    List<Optional<Supplier<Working>>> workings = new ArrayList<>();
    for (Optional<C> column : columns) {
      Optional<? extends Computed<?>> computed = column.flatMap(of);
      values.add(computed.map(Computed::value));
      workings.add(computed.map(c -> c::working));
    }
    return add(unit, label, why, values, workings);
  }

  private FigureRows<C> add(
      Optional<Unit> wanted,
      String label,
      String why,
      List<Optional<? extends Quantity>> values,
      List<Optional<Supplier<Working>>> workings) {
    Optional<Unit> found = unitOf(values);
    if (found.isEmpty()) {
      return this; // the row would be all dashes
    }
    Optional<Unit> unit = wanted.or(() -> found);
    List<Double> numbers =
        values.stream().flatMap(Optional::stream).map(q -> q.in(unit.get())).toList();
    int decimals = Digits.decimals(unit.get(), numbers);
    List<Figure> figures = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      Optional<Supplier<Working>> working = workings.get(i);
      figures.add(
          values
              .get(i)
              .map(q -> new Figure(Figures.grouped(q.in(unit.get()), decimals), working))
              .orElse(Figure.unknown()));
    }
    rows.add(new FigureRow(label, words(unit.get()), why, figures));
    return this;
  }

  /** Single letters make poor headings. */
  private static String words(Unit unit) {
    return switch (unit) {
      case DAY_UNIT -> "days";
      case HOUR -> "hours";
      case MINUTE -> "minutes";
      default -> unit.symbol();
    };
  }

  private Optional<Unit> unitOf(List<Optional<? extends Quantity>> values) {
    return values.stream()
        .flatMap(Optional::stream)
        .filter(Objects::nonNull)
        .findFirst()
        .map(q -> units.unit(q.dimension()));
  }
}
