package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import tankyard.engine.lease.Tank;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.StorageResult;
import tankyard.engine.units.Quantity;
import tankyard.engine.working.Computed;

/** The tanks: how much they hold, how long they last. */
final class TankSection {
  private final Draft draft;

  private TankSection(Draft draft) {
    this.draft = draft;
  }

  static List<Section> of(Draft draft) {
    TankSection section = new TankSection(draft);
    List<Tank> tanks =
        draft.results().lease().tanks().stream().filter(t -> t.status().stays()).toList();
    if (tanks.isEmpty() || draft.results().cases().isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(section.list(tanks));
    section.oil().ifPresent(blocks::add);
    section.oilDays().ifPresent(blocks::add);
    section.water().ifPresent(blocks::add);
    section.pumpBand().ifPresent(blocks::add);
    return List.of(new Section("Tanks", blocks));
  }

  private Block list(List<Tank> tanks) {
    List<Block.Column> columns =
        List.of(
            text("tank"),
            text("holds"),
            number(draft.head("diameter", Figure.HEIGHT)),
            number(draft.head("shell", Figure.HEIGHT)),
            number(draft.head("overflow", Figure.HEIGHT)),
            number(draft.head("inlet", Figure.HEIGHT)),
            text("filled"));
    return new Block.Table(
        "Tank list, heights above each tank's bottom",
        columns,
        tanks.stream().map(this::row).toList());
  }

  private List<String> row(Tank tank) {
    return List.of(
        tank.name(),
        tank.duty() == Tank.Duty.OIL ? "oil" : "water",
        draft.digits(Figure.HEIGHT, tank.diameter()),
        draft.digits(Figure.HEIGHT, tank.shellHeight()),
        draft.digits(Figure.HEIGHT, tank.overflowHeight()),
        draft.digits(Figure.HEIGHT, tank.inletHeight()),
        tank.entry() == Tank.Entry.TOP ? "over the top" : "from below");
  }

  private Optional<Block> oil() {
    return table(
        "Oil: from the sales outlets to the high switches",
        Part.rate(draft.head("oil", Figure.RATE), StorageResult::oilRate),
        List.of(
            Part.of(draft.head("usable", Figure.VOLUME), Figure.VOLUME, StorageResult::oilUsable),
            Part.of(draft.head("needed", Figure.VOLUME), Figure.VOLUME, StorageResult::oilNeeded)));
  }

  private Optional<Block> oilDays() {
    return table(
        "Oil: how long the tanks last",
        Part.rate(draft.head("oil", Figure.RATE), StorageResult::oilRate),
        List.of(
            Part.of("days between loads", Figure.DAYS, StorageResult::haulInterval),
            Part.of("days the road may be out", Figure.DAYS, StorageResult::roadOut),
            Part.of("days to full after a refused load", Figure.DAYS, StorageResult::refusedLoad),
            Part.of(
                draft.head("a load weighs", Figure.WEIGHT),
                Figure.WEIGHT,
                StorageResult::loadWeight)));
  }

  private Optional<Block> water() {
    return table(
        "Water: from pump-on to the overflow, with the injection pump down",
        Part.rate(draft.head("water", Figure.RATE), StorageResult::waterRate),
        List.of(
            Part.of(draft.head("room", Figure.VOLUME), Figure.VOLUME, StorageResult::waterRoom),
            Part.of("hours until it runs over", Figure.HOURS, StorageResult::waterHours)));
  }

  private Optional<Block> pumpBand() {
    return table(
        "Water: between pump-off and pump-on",
        Part.rate(draft.head("water", Figure.RATE), StorageResult::waterRate),
        List.of(
            Part.of(draft.head("pump band", Figure.VOLUME), Figure.VOLUME, StorageResult::band),
            Part.of("pump runs, hours", Figure.HOURS, StorageResult::pumpRuns),
            Part.of("rests, hours", Figure.HOURS, StorageResult::pumpRests),
            Part.of("starts a day", Figure.TIMES, StorageResult::startsADay)));
  }

  /** One number of a case's storage with the head of its column. */
  private record Part(
      String head,
      Figure figure,
      Function<StorageResult, Optional<? extends Computed<? extends Quantity>>> number) {
    static Part of(
        String head,
        Figure figure,
        Function<StorageResult, Optional<? extends Computed<? extends Quantity>>> number) {
      return new Part(head, figure, number);
    }

    static Rate rate(String head, Function<StorageResult, Quantity> rate) {
      return new Rate(head, rate);
    }
  }

  private record Rate(String head, Function<StorageResult, Quantity> rate) {}

  private Optional<Block> table(String title, Rate rate, List<Part> parts) {
    boolean any =
        draft.results().cases().stream()
            .anyMatch(c -> parts.stream().anyMatch(p -> p.number().apply(c.storage()).isPresent()));
    if (!any) {
      return Optional.empty();
    }
    List<Block.Column> columns = new ArrayList<>();
    columns.add(text("case"));
    columns.add(number(rate.head()));
    for (Part part : parts) {
      columns.add(number(part.head()));
      columns.add(text("working"));
    }
    BiFunction<CaseResult, Part, List<String>> cells =
        (c, p) ->
            p.number()
                .apply(c.storage())
                .map(n -> draft.headline(c.designCase().name() + ": " + p.head(), p.figure(), n))
                .map(s -> List.of(s.digits(), s.mark()))
                .orElse(List.of("-", ""));
    List<List<String>> rows = new ArrayList<>();
    for (CaseResult designCase : draft.results().cases()) {
      List<String> row = new ArrayList<>();
      row.add(designCase.designCase().name());
      row.add(draft.digits(Figure.RATE, rate.rate().apply(designCase.storage())));
      parts.forEach(p -> row.addAll(cells.apply(designCase, p)));
      rows.add(row);
    }
    return Optional.of(new Block.Table(title, columns, rows));
  }
}
