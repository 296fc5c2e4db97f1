package tankyard.app.tanks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.app.figures.CaseFigures;
import tankyard.app.figures.FigureRow;
import tankyard.app.figures.FigureRows;
import tankyard.app.figures.FigureSet;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Tank;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.OverflowResult;
import tankyard.engine.study.SeparatorResult;
import tankyard.engine.study.StorageResult;
import tankyard.engine.units.Unit;

/** The rows about separators, tanks and overflows. */
final class TankFigures {
  private final CaseFigures figures;
  private final List<FigureSet> sets = new ArrayList<>();

  private TankFigures(CaseFigures figures) {
    this.figures = figures;
  }

  static List<FigureSet> of(CaseFigures figures) {
    TankFigures tanks = new TankFigures(figures);
    Lease lease = figures.answer().lease();
    lease.separators().forEach(tanks::separator);
    tanks.storage("Oil storage", lease, Tank.Duty.OIL, tanks.oilRows());
    tanks.storage("Water storage", lease, Tank.Duty.WATER, tanks.waterRows());
    lease.lines().forEach(tanks::overflow);
    return List.copyOf(tanks.sets);
  }

  private void separator(Separator separator) {
    FigureRows<SeparatorResult> rows =
        figures
            .rows(c -> c.separator(separator.id()))
            .maybeIn(
                Unit.MINUTE,
                "Oil stays",
                "How long the oil stands above the water: time for the water to drop out of it.",
                SeparatorResult::oilMinutes)
            .maybeIn(
                Unit.MINUTE,
                "Water stays",
                "How long the water stands below the oil: time for the oil to rise out of it.",
                SeparatorResult::waterMinutes)
            .plain("Oil comes in", "Oil of all wells that reach it.", r -> Optional.of(r.oil()))
            .plain(
                "Water comes in", "Water of all wells that reach it.", r -> Optional.of(r.water()))
            .computed(
                "Water leg sized for",
                "Peaks pass the day's average: the leg must take them.",
                SeparatorResult::designWater);
    add(separator.name(), separator.id(), rows.rows());
  }

  private List<FigureRow> oilRows() {
    return storage()
        .plain("Oil made", "Of all wells together.", s -> Optional.of(s.oilRate()))
        .maybe(
            "Usable",
            "From the sales outlets up to the high switches: what lies below is bottoms.",
            StorageResult::oilUsable)
        .maybe(
            "Room needed",
            "One load, and what comes while the road is out.",
            StorageResult::oilNeeded)
        .maybeIn(
            Unit.DAY_UNIT,
            "Between loads",
            "How often the truck must come.",
            StorageResult::haulInterval)
        .maybeIn(
            Unit.DAY_UNIT,
            "Road may be out",
            "With a load still to be taken when it closes.",
            StorageResult::roadOut)
        .rows();
  }

  private List<FigureRow> waterRows() {
    return storage()
        .plain("Water made", "Of all wells together.", s -> Optional.of(s.waterRate()))
        .maybe("Room above pump-on", "Up to the overflow's lip.", StorageResult::waterRoom)
        .maybe(
            "Runs over after",
            "With the injection pump down and the wells running.",
            StorageResult::waterHours)
        .rows();
  }

  private FigureRows<StorageResult> storage() {
    return figures.rows(c -> Optional.of(c.storage()));
  }

  private void storage(String title, Lease lease, Tank.Duty duty, List<FigureRow> rows) {
    List<Tank> tanks = lease.tanks().stream().filter(t -> t.duty() == duty).toList();
    if (!tanks.isEmpty()) {
      String thing = tanks.size() == 1 ? tanks.get(0).id() : "";
      add(tanks.size() == 1 ? tanks.get(0).name() : title, thing, rows);
    }
  }

  private void overflow(Line line) {
    FigureRows<OverflowResult> rows =
        figures
            .rows(c -> overflow(c, line.id()))
            .computed(
                "Passes by gravity",
                "What runs through it by itself, venting as it goes.",
                OverflowResult::capacity)
            .plain(
                "All fluid",
                "What comes over when the dump valve is stuck shut: oil and water together.",
                r -> Optional.of(r.allFluid()));
    add("Overflow: " + line.name(), line.id(), rows.rows());
  }

  private static Optional<OverflowResult> overflow(CaseResult c, String lineId) {
    return c.overflows().stream().filter(o -> o.lineId().equals(lineId)).findFirst();
  }

  private void add(String title, String thingId, List<FigureRow> rows) {
    if (!rows.isEmpty()) {
      sets.add(new FigureSet(title, thingId, rows));
    }
  }
}
