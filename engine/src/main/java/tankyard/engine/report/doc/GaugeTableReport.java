package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.lease.Tank;
import tankyard.engine.tanks.RoundTank;
import tankyard.engine.units.FeetInches;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Length;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.UnitSystem;

/**
 * What each tank holds at each inch, so that a gauged height can be turned into barrels on the
 * spot. From the diameter alone: a tank that oil is sold from is strapped.
 */
public final class GaugeTableReport {
  private static final int INCHES = 12;

  private GaugeTableReport() {}

  /** A section for each tank that stays, up to its shell. */
  public static Report of(Results results) {
    Draft draft = new Draft(results, UnitSystem.FIELD);
    List<Section> sections =
        results.lease().tanks().stream()
            .filter(t -> t.status().stays())
            .map(t -> section(draft, t))
            .toList();
    return draft.finish(LeaseReport.STANDING, sections);
  }

  private static Section section(Draft draft, Tank tank) {
    RoundTank round = new RoundTank(tank.diameter());
    Draft.Shown foot =
        draft.headline(
            tank.name() + ": barrels a foot", Figure.BARRELS_A_FOOT, round.barrelsPerFoot());
    List<Block.Column> columns = new ArrayList<>();
    columns.add(text("ft"));
    for (int inch = 0; inch < INCHES; inch++) {
      columns.add(number(inch + " in"));
    }
    return Section.of(
        "Gauge table of " + tank.name() + ", barrels from the bottom",
        new Block.Words(
            "Inside "
                + FeetInches.onTape(tank.diameter(), Rounding.NEAREST)
                + " across; one foot holds "
                + foot.words()
                + ". Worked out from the diameter, walls and fittings not taken off: for sales the"
                + " tank is strapped by whoever the purchaser accepts."),
        new Block.Table("", columns, rows(tank, round)));
  }

  private static List<List<String>> rows(Tank tank, RoundTank round) {
    List<List<String>> rows = new ArrayList<>();
    double shell = tank.shellHeight().toInches();
    for (int foot = 0; foot * INCHES <= shell; foot++) {
      List<String> row = new ArrayList<>();
      row.add(String.valueOf(foot));
      for (int inch = 0; inch < INCHES; inch++) {
        int height = foot * INCHES + inch;
        row.add(height <= shell + 1e-9 ? barrels(round, height) : "");
      }
      rows.add(row);
    }
    return rows;
  }

  private static String barrels(RoundTank round, int inches) {
    double barrels = round.between(Length.ofInches(0), Length.ofInches(inches)).value().toBarrels();
    return Figures.decimals(barrels, 1);
  }
}
