package tankyard.app.sheet;

import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import tankyard.app.edit.LeaseStore;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ViewSettings;
import tankyard.app.figures.CaseFigures;
import tankyard.app.solve.Freshness;
import tankyard.app.solve.SolveService;
import tankyard.app.solve.Solved;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.working.Working;

/** The page of what is picked, kept in step with the lease, and its results. */
public final class SheetViewModel {
  private final LeaseStore store;
  private final Selection selection;
  private final ViewSettings view;
  private final SolveService solve;
  private final Consumer<Working> showWorking;
  private final SheetPages pages;
  private final ReadOnlyObjectWrapper<SheetHead> head = new ReadOnlyObjectWrapper<>(this, "head");
  private final ReadOnlyObjectWrapper<SheetPage> page = new ReadOnlyObjectWrapper<>(this, "page");
  private final ReadOnlyObjectWrapper<SheetResults> results =
      new ReadOnlyObjectWrapper<>(this, "results", SheetResults.none());
  private final ReadOnlyStringWrapper refusal = new ReadOnlyStringWrapper(this, "refusal", "");
  private List<Object> shape = List.of();

  public SheetViewModel(
      LeaseStore store,
      Selection selection,
      ViewSettings view,
      SolveService solve,
      Catalog catalog,
      Consumer<Working> showWorking) {
    this.store = store;
    this.selection = selection;
    this.view = view;
    this.solve = solve;
    this.showWorking = showWorking;
    pages = new SheetPages(store, view, catalog, refusal::set);
    store.leaseProperty().addListener((o, was, is) -> refreshPage());
    selection.idsProperty().addListener((o, was, is) -> refreshAll());
    view.unitsProperty().addListener((o, was, is) -> refreshAll());
    view.caseIdProperty().addListener((o, was, is) -> refreshResults());
    solve.latestProperty().addListener((o, was, is) -> refreshResults());
    refreshAll();
  }

  ReadOnlyObjectProperty<SheetHead> headProperty() {
    return head.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<SheetPage> pageProperty() {
    return page.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<SheetResults> resultsProperty() {
    return results.getReadOnlyProperty();
  }

  /** Why a button's edit was not done; empty once something else is done or picked. */
  ReadOnlyStringProperty refusalProperty() {
    return refusal.getReadOnlyProperty();
  }

  ObservableValue<Freshness> freshness() {
    return solve.freshnessProperty();
  }

  void show(Working working) {
    showWorking.accept(working);
  }

  void select(String thingId) {
    selection.reveal(thingId);
  }

  private void refreshAll() {
    refreshPage();
    refreshResults();
  }

  /** A page of the same shape keeps its fields, and with them the keyboard and what is typed. */
  private void refreshPage() {
    refusal.set("");
    List<String> ids = selection.ids().stream().filter(this::isThere).toList();
    List<Object> now = pages.shape(ids);
    if (page.get() == null || !now.equals(shape)) {
      shape = now;
      SheetPage made = pages.page(ids);
      made.form().show(store.lease());
      page.set(made);
    } else {
      page.get().form().show(store.lease());
    }
    head.set(SheetHead.of(store.lease(), ids));
  }

  /** The store tells this sheet of a delete before it tells the selection. */
  private boolean isThere(String id) {
    return store.lease().thing(id).isPresent() || store.lease().line(id).isPresent();
  }

  private void refreshResults() {
    results.set(
        solve
            .latest()
            .map(Solved::answer)
            .map(answer -> new CaseFigures(answer, view.caseId(), view.units()))
            .map(figures -> new ResultsMaker(figures).results(selection.ids()))
            .orElse(SheetResults.none()));
  }
}
