package tankyard.app.pressure;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ViewSettings;
import tankyard.app.solve.CureService;
import tankyard.engine.cures.CureBook;
import tankyard.engine.cures.CureResult;
import tankyard.engine.cures.TankLevels;
import tankyard.engine.cures.TankReach;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.UnitSystem;

/** What would help each separator, once somebody asked. */
public final class CuresViewModel {
  private static final String NOT_ASKED =
      "One change after the other is drawn and the whole lease worked out anew, bill included. That"
          + " takes a moment, so it waits to be asked, and the next edit forgets it.";
  private static final int FIGURES = 3;

  private final Selection selection;
  private final ViewSettings view;
  private final CureService service;
  private final ObservableList<CureRow> rows = FXCollections.observableArrayList();
  private final ReadOnlyStringWrapper words = new ReadOnlyStringWrapper(this, "words", NOT_ASKED);
  private final ReadOnlyStringWrapper others = new ReadOnlyStringWrapper(this, "others", "");

  public CuresViewModel(Selection selection, ViewSettings view, CureService service) {
    this.selection = selection;
    this.view = view;
    this.service = service;
    service.stateProperty().addListener((o, was, is) -> refresh());
    view.unitsProperty().addListener((o, was, is) -> refresh());
  }

  /** Every change for every separator, best first. */
  ObservableList<CureRow> rows() {
    return rows;
  }

  /** What stands above the table. */
  ReadOnlyStringProperty wordsProperty() {
    return words.getReadOnlyProperty();
  }

  /** What stands below it: other ways, and how far the tank can go. */
  ReadOnlyStringProperty othersProperty() {
    return others.getReadOnlyProperty();
  }

  void ask() {
    service.ask();
  }

  void select(String thingId) {
    if (!thingId.isEmpty()) {
      selection.reveal(thingId);
    }
  }

  String unit() {
    return Rounded.in(view.units()).unit().symbol();
  }

  private void refresh() {
    List<CureBook> books = service.booksProperty().get();
    rows.setAll(books.stream().flatMap(b -> rows(b).stream()).toList());
    words.set(
        switch (service.stateProperty().get()) {
          case NOT_ASKED -> NOT_ASKED;
          case WORKING -> "Working it out ...";
          case FAILED -> "It could not be worked out: " + service.failureProperty().get();
          case SHOWN -> shown(books);
        });
    others.set(books.stream().map(this::others).collect(Collectors.joining("\n\n")));
  }

  private static String shown(List<CureBook> books) {
    return books.stream().allMatch(b -> b.cures().isEmpty())
        ? "Nothing that can be tried on this lease would gain anything."
        : "Room is the most less the least less the regulator's build-up. First come the changes that"
            + " leave the fewest stop and fix findings, then the cheapest for each psi. + more,"
            + " + daily and in no bill mark costs that no bill has.";
  }

  private List<CureRow> rows(CureBook book) {
    List<CureRow> found = new ArrayList<>();
    for (CureResult cure : book.cures()) {
      found.add(row(found.size() + 1, cure, book));
    }
    return found;
  }

  private CureRow row(int place, CureResult cure, CureBook book) {
    Optional<Pressure> gained = Optional.of(cure.gained());
    return new CureRow(
        place,
        cure.words(),
        cure.care(),
        cure.thingId(),
        value(cure.least()),
        digits(cure.least(), Rounding.UP),
        value(cure.most()),
        digits(cure.most(), Rounding.DOWN),
        value(cure.room()),
        digits(cure.room(), Rounding.DOWN),
        value(gained),
        digits(gained, Rounding.NEAREST),
        cure.toMend(),
        cure.cost().doubleValue(),
        money(cure, book.currency()),
        book.separatorName());
  }

  private double value(Optional<Pressure> pressure) {
    return pressure.map(Rounded.in(view.units())::value).orElse(Double.NaN);
  }

  private String digits(Optional<Pressure> pressure, Rounding side) {
    Rounded rounded = Rounded.in(view.units());
    return pressure.map(p -> rounded.towards(rounded.value(p), side)).orElse("–");
  }

  private static String money(CureResult cure, String currency) {
    long whole = cure.cost().setScale(0, RoundingMode.HALF_UP).longValueExact();
    if (whole == 0 && cure.unpriced() == 0 && cure.billing() == CureResult.Billing.PART) {
      return "in no bill";
    }
    String unpriced = cure.unpriced() == 0 ? "" : " + " + cure.unpriced() + " unpriced";
    String more =
        switch (cure.billing()) {
          case ALL -> "";
          case PART -> " + more";
          case DAILY -> " + daily";
        };
    return String.format(Locale.ROOT, "%,d ", whole) + currency + unpriced + more;
  }

  private String others(CureBook book) {
    List<String> lines = new ArrayList<>(List.of(book.separatorName() + ". Other ways:"));
    lines.addAll(book.others());
    for (TankReach reach : book.reaches()) {
      lines.add(reach(reach));
    }
    book.levels().map(this::levels).ifPresent(lines::add);
    return String.join("\n", lines);
  }

  private String levels(TankLevels tank) {
    if (tank.heldOnTheWay()) {
      return "The level in "
          + tank.tankName()
          + " does not count: "
          + tank.onTheWay().orElseThrow()
          + " asks for "
          + least(tank.asDrawn())
          + " whatever stands in it.";
    }
    String each =
        tank.levels().stream()
            .map(at -> least(at.gauge()) + " " + at.words())
            .collect(Collectors.joining(", "));
    return tank.tankName()
        + " filled from below asks for at least "
        + each
        + (tank.drawnSo() ? "." : "; as it is drawn for " + least(tank.asDrawn()) + ".");
  }

  private String least(Pressure pressure) {
    return digits(Optional.of(pressure), Rounding.UP) + " " + unit();
  }

  private String reach(TankReach reach) {
    UnitSystem units = view.units();
    String far =
        reach.times().stream()
            .map(
                t ->
                    t.longest().map(l -> far(l, units)).orElse("not at all")
                        + " at "
                        + units.print(t.rate(), FIGURES))
            .collect(Collectors.joining(", "));
    return "Water tank, with the gauge at "
        + units.print(reach.setting(), FIGURES)
        + ", in "
        + reach.pipeName()
        + ": as far as "
        + far
        + ".";
  }

  private static String far(Length length, UnitSystem units) {
    return units.print(length, FIGURES);
  }
}
