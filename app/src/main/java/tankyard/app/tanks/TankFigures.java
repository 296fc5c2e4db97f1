package tankyard.app.tanks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tankyard.app.figures.CaseFigures;
import tankyard.app.figures.FigureRow;
import tankyard.app.figures.FigureSet;
import tankyard.app.figures.ResultRows;
import tankyard.app.figures.TankRows;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Tank;

/** The sets of rows about separators, tanks and overflows. */
final class TankFigures {
  private final Lease lease;
  private final List<FigureSet> sets = new ArrayList<>();

  private TankFigures(Lease lease) {
    this.lease = lease;
  }

  static List<FigureSet> of(CaseFigures figures) {
    Lease lease = figures.answer().lease();
    TankFigures tanks = new TankFigures(lease);
    ResultRows vessels = new ResultRows(figures);
    TankRows rows = new TankRows(figures);
    lease.separators().forEach(s -> tanks.add(s.name(), s.id(), vessels.separator(s.id())));
    lease.gunBarrels().forEach(g -> tanks.add(g.name(), g.id(), vessels.gunBarrel(g.id())));
    tanks.storage("Oil tanks", Tank.Duty.OIL, rows.oilStorage());
    tanks.storage("Water tanks", Tank.Duty.WATER, rows.waterStorage());
    lease
        .tanks()
        .forEach(t -> tanks.add(t.name() + ", high switch", t.id(), rows.highSwitch(t.id())));
    lease.tanks().forEach(t -> tanks.add(t.name() + ", vent", t.id(), rows.vent(t.id())));
    lease.lines().forEach(l -> tanks.add(overflowName(l), l.id(), rows.overflow(l.id())));
    return List.copyOf(tanks.sets);
  }

  private static String overflowName(Line line) {
    boolean says = line.name().toLowerCase(Locale.ROOT).contains("overflow");
    return says ? line.name() : "Overflow: " + line.name();
  }

  private void storage(String title, Tank.Duty duty, List<FigureRow> rows) {
    List<Tank> tanks =
        lease.tanks().stream().filter(t -> t.duty() == duty && t.status().stays()).toList();
    if (tanks.size() == 1) {
      add(tanks.get(0).name(), tanks.get(0).id(), rows);
    } else if (!tanks.isEmpty()) {
      add(title + " together", "", rows);
    }
  }

  private void add(String title, String thingId, List<FigureRow> rows) {
    if (!rows.isEmpty()) {
      sets.add(new FigureSet(title, thingId, rows));
    }
  }
}
