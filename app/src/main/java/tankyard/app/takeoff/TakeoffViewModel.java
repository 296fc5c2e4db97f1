package tankyard.app.takeoff;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import tankyard.app.edit.Selection;
import tankyard.app.solve.Freshness;
import tankyard.app.solve.SolveService;
import tankyard.app.solve.Solved;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.pricing.Bill;
import tankyard.engine.pricing.BillCsv;
import tankyard.engine.pricing.BillTotals;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Fraction;
import tankyard.engine.working.Working;

/** The latest bill, line by line, with its sums. */
public final class TakeoffViewModel {
  private static final String EMPTY =
      "Draw things that must be bought: then this lists them, with the thing that caused each line.";

  private final Selection selection;
  private final SolveService solve;
  private final Consumer<Working> showWorking;
  private final Consumer<String> clipboard;
  private final SaveText files;
  private final ObservableList<BillRow> rows = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<List<SumRow>> sums =
      new ReadOnlyObjectWrapper<>(this, "sums", List.of());
  private final ReadOnlyObjectWrapper<List<String>> warnings =
      new ReadOnlyObjectWrapper<>(this, "warnings", List.of());
  private final ReadOnlyStringWrapper currency = new ReadOnlyStringWrapper(this, "currency", "");
  private final ReadOnlyStringWrapper emptyWords =
      new ReadOnlyStringWrapper(this, "emptyWords", "");

  /**
   * A model that listens from now on.
   *
   * @param clipboard takes the bill as text that a spreadsheet can paste
   * @param files takes the bill as CSV
   */
  public TakeoffViewModel(
      Selection selection,
      SolveService solve,
      Consumer<Working> showWorking,
      Consumer<String> clipboard,
      SaveText files) {
    this.selection = selection;
    this.solve = solve;
    this.showWorking = showWorking;
    this.clipboard = clipboard;
    this.files = files;
    solve.latestProperty().addListener((o, was, is) -> refresh());
    refresh();
  }

  ObservableList<BillRow> rows() {
    return rows;
  }

  ReadOnlyObjectProperty<List<SumRow>> sumsProperty() {
    return sums.getReadOnlyProperty();
  }

  /** The money of every price, as a heading adds it: ", USD"; empty before the first bill. */
  ReadOnlyStringProperty currencyProperty() {
    return currency.getReadOnlyProperty();
  }

  /** What must be said with the total. */
  ReadOnlyObjectProperty<List<String>> warningsProperty() {
    return warnings.getReadOnlyProperty();
  }

  ReadOnlyStringProperty emptyWordsProperty() {
    return emptyWords.getReadOnlyProperty();
  }

  ObservableValue<Freshness> freshness() {
    return solve.freshnessProperty();
  }

  /** Picks what caused a line, and brings it into view where that is one thing. */
  void pick(BillRow row) {
    List<String> causes = row.causes().stream().filter(id -> !id.isEmpty()).toList();
    if (causes.size() == 1) {
      selection.reveal(causes.get(0));
    } else if (!causes.isEmpty()) {
      selection.select(causes);
    }
  }

  void showTotalWorking() {
    bill().ifPresent(bill -> showWorking.accept(bill.totals().working()));
  }

  /** Tabs between the cells, as spreadsheets paste it. */
  void copy() {
    StringBuilder text =
        new StringBuilder("Item\tFor\tQuantity\tUnit\tPrice\tTotal\tStatus\tRemark\n");
    for (BillRow row : rows) {
      text.append(
              String.join(
                  "\t",
                  row.text(),
                  row.forWhat(),
                  row.quantityDigits(),
                  row.unit(),
                  row.price(),
                  row.total(),
                  row.status(),
                  row.remark()))
          .append('\n');
    }
    for (SumRow sum : sums.get()) {
      text.append(sum.label()).append("\t\t\t\t\t").append(sum.amount()).append('\n');
    }
    clipboard.accept(text.toString());
  }

  void exportCsv() {
    bill()
        .ifPresent(
            bill -> {
              StringBuilder csv = new StringBuilder();
              try {
                BillCsv.write(bill, csv);
              } catch (IOException e) {
                throw new UncheckedIOException("Text in memory can't fail to be written", e);
              }
              files.save("bill.csv", csv.toString());
            });
  }

  private Optional<Bill> bill() {
    return solve.latest().map(Solved::answer).map(LeaseAnswer::bill);
  }

  private void refresh() {
    Optional<LeaseAnswer> answer = solve.latest().map(Solved::answer);
    rows.setAll(answer.map(a -> BillRows.of(a.bill(), a.lease())).orElse(List.of()));
    sums.set(answer.map(a -> sums(a.bill().totals())).orElse(List.of()));
    warnings.set(answer.map(a -> warnings(a.bill())).orElse(List.of()));
    currency.set(answer.map(a -> ", " + a.bill().totals().currency()).orElse(""));
    emptyWords.set(rows.isEmpty() ? EMPTY : "");
  }

  private static List<SumRow> sums(BillTotals totals) {
    return List.of(
        new SumRow("Goods", BillRows.money(totals.goods()), false),
        new SumRow("Work", BillRows.money(totals.work()), false),
        new SumRow(
            "Contingency, " + percent(totals.contingencyRate()),
            BillRows.money(totals.contingency()),
            false),
        new SumRow(
            "Tax on goods, " + percent(totals.taxRate()), BillRows.money(totals.tax()), false),
        new SumRow("Total, " + totals.currency(), BillRows.money(totals.total()), true));
  }

  private static List<String> warnings(Bill bill) {
    BillTotals totals = bill.totals();
    List<String> words = new ArrayList<>();
    if (totals.unpriced() > 0) {
      words.add("The total is without " + lines(totals.unpriced()) + " that nobody priced.");
    }
    if (totals.invented() > 0) {
      words.add(
          "On " + lines(totals.invented()) + " the price is invented: ask your store for its own.");
    }
    if (totals.stale() > 0) {
      words.add("On " + lines(totals.stale()) + " the price is a year old or more.");
    }
    if (totals.have().signum() > 0) {
      words.add(
          "What is there already is worth "
              + BillRows.money(totals.have())
              + " "
              + totals.currency()
              + ".");
    }
    bill.notUsed()
        .forEach(quote -> words.add("Quote " + quote.quoteId() + " is not used: " + quote.why()));
    words.add("Priced on " + bill.asOf() + ".");
    return words;
  }

  private static String lines(int count) {
    return count + (count == 1 ? " line" : " lines");
  }

  private static String percent(Fraction rate) {
    return Figures.significant(rate.toPercent(), 4) + " %";
  }
}
