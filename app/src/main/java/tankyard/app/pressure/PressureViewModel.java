package tankyard.app.pressure;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ViewSettings;
import tankyard.app.solve.Freshness;
import tankyard.app.solve.SolveService;
import tankyard.app.solve.Solved;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Window;
import tankyard.engine.working.Working;

/** The windows of all separators, in the units shown. */
public final class PressureViewModel {
  private static final String NO_SEPARATOR =
      "Place a separator, and draw a water leg from it to a water tank: then this shows between"
          + " which pressures the regulator can be set. A gun barrel has no regulator: what it does"
          + " stands under Vessels and tanks.";
  private static final String NO_RESULT = "Nothing has been worked out yet.";

  private final Selection selection;
  private final ViewSettings view;
  private final SolveService solve;
  private final Consumer<Working> showWorking;
  private final ReadOnlyObjectWrapper<List<WindowPicture>> pictures =
      new ReadOnlyObjectWrapper<>(this, "pictures", List.of());
  private final ObservableList<LimitRow> limits = FXCollections.observableArrayList();
  private final ReadOnlyStringWrapper emptyWords = new ReadOnlyStringWrapper(this, "emptyWords");

  public PressureViewModel(
      Selection selection, ViewSettings view, SolveService solve, Consumer<Working> showWorking) {
    this.selection = selection;
    this.view = view;
    this.solve = solve;
    this.showWorking = showWorking;
    solve.latestProperty().addListener((o, was, is) -> refresh());
    view.unitsProperty().addListener((o, was, is) -> refresh());
    refresh();
  }

  ReadOnlyObjectProperty<List<WindowPicture>> picturesProperty() {
    return pictures.getReadOnlyProperty();
  }

  /** Every limit of every case of every separator, the governing ones first. */
  ObservableList<LimitRow> limits() {
    return limits;
  }

  /** What to do first; empty where there is something to show. */
  ReadOnlyStringProperty emptyWordsProperty() {
    return emptyWords.getReadOnlyProperty();
  }

  ObservableValue<Freshness> freshness() {
    return solve.freshnessProperty();
  }

  String unit() {
    return Rounded.in(view.units()).unit().symbol();
  }

  void select(String thingId) {
    if (!thingId.isEmpty()) {
      selection.reveal(thingId);
    }
  }

  void show(Supplier<Working> working) {
    showWorking.accept(working.get());
  }

  private void refresh() {
    LeaseAnswer answer = solve.latest().map(Solved::answer).orElse(null);
    if (answer == null) {
      pictures.set(List.of());
      limits.clear();
      emptyWords.set(NO_RESULT);
      return;
    }
    UnitSystem units = view.units();
    Map<String, String> caseNames =
        answer.lease().cases().stream()
            .collect(Collectors.toMap(DesignCase::id, DesignCase::name, (a, b) -> a));
    PictureMaker maker = new PictureMaker(units, caseNames);
    limits.setAll(answer.windows().stream().flatMap(w -> rows(w, units, caseNames)).toList());
    pictures.set(answer.windows().stream().map(maker::picture).toList());
    emptyWords.set(answer.windows().isEmpty() ? NO_SEPARATOR : "");
  }

  private static Stream<LimitRow> rows(
      Window window, UnitSystem units, Map<String, String> caseNames) {
    return Stream.concat(
        window.needed().stream().map(l -> row(window, l, true, units, caseNames)),
        window.allowed().stream().map(l -> row(window, l, false, units, caseNames)));
  }

  private static LimitRow row(
      Window window,
      PressureLimit limit,
      boolean needed,
      UnitSystem units,
      Map<String, String> caseNames) {
    Rounded rounded = Rounded.in(units);
    double gauge = rounded.value(limit.gauge().value());
    return new LimitRow(
        window.separatorName(),
        needed ? "at least" : "at most",
        limit.kind().words(),
        limit.thingId(),
        limit.nameIn(units),
        caseNames.getOrDefault(limit.caseId(), limit.caseId()),
        gauge,
        rounded.limit(limit),
        rounded.value(limit.lift()),
        rounded.value(limit.friction()),
        rounded.value(limit.valve()),
        rounded.value(limit.margin()),
        limit.gauge()::working);
  }
}
