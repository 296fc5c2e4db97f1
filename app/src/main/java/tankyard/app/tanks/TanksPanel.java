package tankyard.app.tanks;

import java.util.function.Consumer;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ViewSettings;
import tankyard.app.figures.CaseTableModel;
import tankyard.app.figures.CaseTableView;
import tankyard.app.solve.SolveService;
import tankyard.engine.working.Working;

/** The panel of vessels and tanks. */
public final class TanksPanel {
  private static final String EMPTY =
      "Place a separator or gun barrel and tanks, and lead the wells to them: then this shows how long each holds"
          + " what comes.";

  private TanksPanel() {}

  public static CaseTableView make(
      Selection selection, ViewSettings view, SolveService solve, Consumer<Working> showWorking) {
    return new CaseTableView("tanks", model(selection, view, solve, showWorking));
  }

  static CaseTableModel model(
      Selection selection, ViewSettings view, SolveService solve, Consumer<Working> showWorking) {
    return new CaseTableModel(selection, view, solve, showWorking, TankFigures::of, EMPTY);
  }
}
