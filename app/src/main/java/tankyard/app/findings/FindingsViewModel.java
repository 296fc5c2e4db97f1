package tankyard.app.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import tankyard.app.edit.Selection;
import tankyard.app.solve.Freshness;
import tankyard.app.solve.SolveService;
import tankyard.app.solve.Solved;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Thing;
import tankyard.engine.working.Working;

/** The findings, worst first, narrowed by severity. */
public final class FindingsViewModel {
  private static final String NOTHING_YET = "Nothing has been worked out yet.";
  private static final String NOTHING_FOUND =
      "No finding. That speaks for what was checked and for nothing else: what could not be checked"
          + " is listed below the back-pressure window.";
  private static final String ALL_HIDDEN = "All findings are hidden: press a severity above.";

  private final Selection selection;
  private final SolveService solve;
  private final Consumer<Working> showWorking;
  private final List<FindingRow> all = new ArrayList<>();
  private final ObservableList<FindingRow> shown = FXCollections.observableArrayList();
  private final Map<Severity, BooleanProperty> wanted = new EnumMap<>(Severity.class);
  private final Map<Severity, ReadOnlyIntegerWrapper> counts = new EnumMap<>(Severity.class);
  private final ObjectProperty<FindingRow> picked = new SimpleObjectProperty<>(this, "picked");
  private final ReadOnlyStringWrapper emptyWords =
      new ReadOnlyStringWrapper(this, "emptyWords", "");

  public FindingsViewModel(Selection selection, SolveService solve, Consumer<Working> showWorking) {
    this.selection = selection;
    this.solve = solve;
    this.showWorking = showWorking;
    for (Severity severity : Severity.values()) {
      BooleanProperty want = new SimpleBooleanProperty(this, severity.words(), true);
      want.addListener((o, was, is) -> narrow());
      wanted.put(severity, want);
      counts.put(severity, new ReadOnlyIntegerWrapper(this, severity.words() + "Count"));
    }
    solve.latestProperty().addListener((o, was, is) -> refresh());
    picked.addListener((o, was, is) -> reveal(was, is));
    refresh();
  }

  ObservableList<FindingRow> shown() {
    return shown;
  }

  /** Whether findings of that severity are listed. */
  BooleanProperty wantedProperty(Severity severity) {
    return wanted.get(severity);
  }

  /** How many there are, listed or not; also for the window's status line. */
  public ReadOnlyIntegerProperty countProperty(Severity severity) {
    return counts.get(severity).getReadOnlyProperty();
  }

  /** The one looked at; null where none is. */
  ObjectProperty<FindingRow> pickedProperty() {
    return picked;
  }

  ReadOnlyStringProperty emptyWordsProperty() {
    return emptyWords.getReadOnlyProperty();
  }

  ObservableValue<Freshness> freshness() {
    return solve.freshnessProperty();
  }

  void show(Working working) {
    showWorking.accept(working);
  }

  void showOnMap(FindingRow row) {
    if (!row.thingId().isEmpty()) {
      selection.reveal(row.thingId());
    }
  }

  private void refresh() {
    all.clear();
    solve.latest().map(Solved::answer).ifPresent(answer -> all.addAll(rows(answer)));
    for (Severity severity : Severity.values()) {
      counts
          .get(severity)
          .set((int) all.stream().filter(row -> row.severity() == severity).count());
    }
    narrow();
  }

  private void narrow() {
    FindingRow before = picked.get();
    shown.setAll(all.stream().filter(row -> wanted.get(row.severity()).get()).toList());
    picked.set(
        Optional.ofNullable(before)
            .flatMap(b -> shown.stream().filter(b::isSameMatter).findFirst())
            .orElse(null));
    emptyWords.set(shown.isEmpty() ? emptyReason() : "");
  }

  private String emptyReason() {
    return solve.latest().isEmpty() ? NOTHING_YET : all.isEmpty() ? NOTHING_FOUND : ALL_HIDDEN;
  }

  /** Picking shows the thing; the same finding with new numbers moves nothing. */
  private void reveal(FindingRow was, FindingRow is) {
    if (is != null && (was == null || !was.isSameMatter(is))) {
      showOnMap(is);
    }
  }

  private static List<FindingRow> rows(LeaseAnswer answer) {
    Lease lease = answer.lease();
    List<FindingRow> rows = new ArrayList<>();
    answer.diagnoses().forEach(d -> rows.add(FindingRow.of(d, name(lease, d.thingId()))));
    answer
        .findings()
        .forEach(
            f -> rows.add(FindingRow.of(f, name(lease, f.thingId()), caseName(lease, f.caseId()))));
    List<FindingRow> distinct = new ArrayList<>();
    for (FindingRow row : rows) {
      if (distinct.stream().noneMatch(d -> d.words().equals(row.words()))) {
        distinct.add(row);
      }
    }
    distinct.sort(Comparator.comparing(FindingRow::severity));
    return distinct;
  }

  private static String name(Lease lease, String id) {
    return lease
        .thing(id)
        .map(Thing::name)
        .or(() -> lease.line(id).map(Line::name))
        .orElse(id.isEmpty() ? "The lease" : id);
  }

  private static String caseName(Lease lease, Optional<String> id) {
    return id.flatMap(
            wantedId ->
                lease.cases().stream()
                    .filter(c -> c.id().equals(wantedId))
                    .map(DesignCase::name)
                    .findFirst())
        .orElse(id.orElse(""));
  }
}
