package tankyard.app.figures;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ViewSettings;
import tankyard.app.solve.Freshness;
import tankyard.app.solve.SolveService;
import tankyard.app.solve.Solved;
import tankyard.engine.working.Working;

/** Keeps a table of figures in step with the latest answer, the units and the case. */
public final class CaseTableModel {
  private static final String NOTHING_YET = "Nothing has been worked out yet.";

  private final Selection selection;
  private final ViewSettings view;
  private final SolveService solve;
  private final Consumer<Working> showWorking;
  private final Function<CaseFigures, CaseTable> made;
  private final String whenEmpty;
  private final ReadOnlyObjectWrapper<CaseTable> table =
      new ReadOnlyObjectWrapper<>(this, "table", CaseTable.empty());
  private final ReadOnlyStringWrapper emptyWords =
      new ReadOnlyStringWrapper(this, "emptyWords", "");

  /**
   * A model that listens from now on.
   *
   * @param sets makes the rows from an answer
   * @param whenEmpty what to do first, shown while there is no row
   */
  public CaseTableModel(
      Selection selection,
      ViewSettings view,
      SolveService solve,
      Consumer<Working> showWorking,
      Function<CaseFigures, List<FigureSet>> sets,
      String whenEmpty) {
    this(
        selection,
        view,
        solve,
        showWorking,
        whenEmpty,
        figures -> new CaseTable(figures.columns(), sets.apply(figures)));
  }

  /**
   * The same for a table whose columns are not the cases.
   *
   * @param whenEmpty what to do first, shown while there is no row
   * @param made makes the table from an answer
   */
  public CaseTableModel(
      Selection selection,
      ViewSettings view,
      SolveService solve,
      Consumer<Working> showWorking,
      String whenEmpty,
      Function<CaseFigures, CaseTable> made) {
    this.selection = selection;
    this.view = view;
    this.solve = solve;
    this.showWorking = showWorking;
    this.made = made;
    this.whenEmpty = whenEmpty;
    solve.latestProperty().addListener((o, was, is) -> refresh());
    view.unitsProperty().addListener((o, was, is) -> refresh());
    view.caseIdProperty().addListener((o, was, is) -> refresh());
    refresh();
  }

  public ReadOnlyObjectProperty<CaseTable> tableProperty() {
    return table.getReadOnlyProperty();
  }

  public ReadOnlyStringProperty emptyWordsProperty() {
    return emptyWords.getReadOnlyProperty();
  }

  public ObservableValue<Freshness> freshness() {
    return solve.freshnessProperty();
  }

  public void select(String thingId) {
    selection.reveal(thingId);
  }

  public void show(Working working) {
    showWorking.accept(working);
  }

  private void refresh() {
    table.set(
        solve
            .latest()
            .map(Solved::answer)
            .map(answer -> new CaseFigures(answer, view.caseId(), view.units()))
            .map(made)
            .orElse(CaseTable.empty()));
    boolean empty = table.get().sets().isEmpty();
    emptyWords.set(!empty ? "" : solve.latest().isEmpty() ? NOTHING_YET : whenEmpty);
  }
}
