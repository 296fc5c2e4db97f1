package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tankyard.engine.cures.CureBook;
import tankyard.engine.cures.CureResult;
import tankyard.engine.cures.TankReach;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Rounding;

/** What would help, in psi and in money, and how far the water tank can go. */
final class CureSection {
  private static final String NONE = "-";

  private static final Length FARTHEST = Length.ofFeet(26_400);

  private final Draft draft;
  private final CureBook book;

  private CureSection(Draft draft, CureBook book) {
    this.draft = draft;
    this.book = book;
  }

  static List<Section> of(Draft draft) {
    return draft.results().cures().stream()
        .filter(
            b ->
                !b.cures().isEmpty()
                    || !b.others().isEmpty()
                    || !b.reaches().isEmpty()
                    || b.levels().isPresent())
        .map(b -> new CureSection(draft, b).section())
        .toList();
  }

  private Section section() {
    List<Block> blocks = new ArrayList<>();
    if (!book.cures().isEmpty()) {
      blocks.add(cures());
      blocks.add(new Block.Words(words()));
      List<String> cares =
          IntStream.range(0, book.cures().size())
              .filter(i -> !book.cures().get(i).care().isEmpty())
              .mapToObj(i -> (i + 1) + ": " + book.cures().get(i).care())
              .toList();
      if (!cares.isEmpty()) {
        blocks.add(new Block.Points(cares));
      }
    }
    if (!book.others().isEmpty()) {
      blocks.add(new Block.Words("Other ways, by hand sums and in no bill:"));
      blocks.add(new Block.Points(book.others()));
    }
    if (!book.reaches().isEmpty()) {
      blocks.add(longest());
      blocks.add(needs());
      blocks.add(new Block.Words(reachWords()));
    }
    book.levels().map(tank -> LevelBlocks.of(draft, tank)).ifPresent(blocks::addAll);
    return new Section("What would help " + book.separatorName(), blocks);
  }

  private Block cures() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "",
            "as it is",
            reading(book.least(), Rounding.UP),
            reading(book.most(), Rounding.DOWN),
            reading(book.room(), Rounding.DOWN),
            NONE,
            String.valueOf(book.toMend()),
            NONE));
    for (int i = 0; i < book.cures().size(); i++) {
      rows.add(row(i + 1, book.cures().get(i)));
    }
    return new Block.Table(
        "Best first",
        List.of(
            number(""),
            text("change"),
            number(draft.head("least", Figure.READING)),
            number("most"),
            number("room"),
            number("gained"),
            number("to mend"),
            number("cost, " + book.currency())),
        rows);
  }

  private List<String> row(int number, CureResult cure) {
    return List.of(
        String.valueOf(number),
        cure.words(),
        reading(cure.least(), Rounding.UP),
        reading(cure.most(), Rounding.DOWN),
        reading(cure.room(), Rounding.DOWN),
        draft.digits(Figure.READING, cure.gained()),
        String.valueOf(cure.toMend()),
        money(cure));
  }

  /** Rounded to the dollar: a takeoff is no better. */
  private static String money(CureResult cure) {
    BigDecimal whole = cure.cost().setScale(0, java.math.RoundingMode.HALF_UP);
    if (whole.signum() == 0 && cure.unpriced() == 0 && cure.billing() == CureResult.Billing.PART) {
      return "in no bill";
    }
    String known = String.format(java.util.Locale.ROOT, "%,d", whole.longValueExact());
    String more =
        switch (cure.billing()) {
          case ALL -> "";
          case PART -> " + more";
          case DAILY -> " + daily";
        };
    return known + (cure.unpriced() == 0 ? "" : " + " + cure.unpriced() + " unpriced") + more;
  }

  private String words() {
    return "Each change was drawn and the whole lease worked out anew, bill included; one change at a"
        + " time. Room is most less least less the regulator's build-up: below zero no setting"
        + " works. To mend counts the stop and fix findings that are left. First come the changes"
        + " that leave the fewest, among them those of which every line has a price, among them the"
        + " cheapest for each psi gained; + more, + daily and in no bill mark costs that no bill"
        + " has, named below, which come after.";
  }

  private Block longest() {
    List<Block.Column> columns = new ArrayList<>(List.of(text("leg in")));
    book.reaches()
        .get(0)
        .times()
        .forEach(
            t ->
                columns.add(
                    number(
                        draft.head(
                            "at " + draft.words(Figure.RATE, t.rate()) + " up to",
                            Figure.DISTANCE))));
    List<List<String>> rows = new ArrayList<>();
    for (TankReach reach : book.reaches()) {
      List<String> row = new ArrayList<>(List.of(reach.pipeName()));
      reach.times().forEach(t -> row.add(t.longest().map(this::far).orElse("not at all")));
      rows.add(row);
    }
    String title =
        "How far can the water tank go, with the gauge at "
            + draft.words(Figure.READING, book.reaches().get(0).setting());
    return new Block.Table(title, columns, rows);
  }

  /** Beyond five miles nobody asks. */
  private String far(Length length) {
    return length.toFeet() > FARTHEST.toFeet()
        ? "> " + draft.digits(Figure.DISTANCE, FARTHEST)
        : draft.digits(Figure.DISTANCE, length);
  }

  private Block needs() {
    List<Block.Column> columns = new ArrayList<>(List.of(text("leg in")));
    book.reaches()
        .get(0)
        .needs()
        .forEach(n -> columns.add(number("at " + draft.words(Figure.DISTANCE, n.length()))));
    List<List<String>> rows = new ArrayList<>();
    for (TankReach reach : book.reaches()) {
      List<String> row = new ArrayList<>(List.of(reach.pipeName()));
      reach.needs().forEach(n -> row.add(draft.digits(Figure.READING, n.gauge())));
      rows.add(row);
    }
    return new Block.Table(
        draft.head("Least gauge reading at the design rate", Figure.READING), columns, rows);
  }

  private String reachWords() {
    TankReach reach = book.reaches().get(0);
    String drained =
        reach.drained().toPsi() > 0
            ? " At pump-off it asks for " + draft.words(Figure.READING, reach.drained()) + " less."
            : "";
    String crest =
        reach
            .crest()
            .map(
                c ->
                    " On the way as it is drawn "
                        + c
                        + " sets the least, however near the tank stands beyond it.")
            .orElse("");
    return "Tank and separator keep their heights, the tank is full, and the leg lies on ground no"
        + " higher than its end."
        + drained
        + crest;
  }

  /** To the side that keeps the limit. */
  private String reading(Optional<Pressure> pressure, Rounding side) {
    return pressure.map(p -> Figure.READING.digits(p.si(), draft.units(), side)).orElse(NONE);
  }
}
