package tankyard.app.pumps;

import java.util.function.Consumer;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ViewSettings;
import tankyard.app.figures.CaseTableModel;
import tankyard.app.figures.CaseTableView;
import tankyard.app.solve.SolveService;
import tankyard.engine.working.Working;

/** The panel of injection. */
public final class PumpsPanel {
  private static final String EMPTY =
      "Place an injection pump between the water tank and an injection well, and draw a suction line"
          + " and an injection line: then this shows pressure, power and hours.";

  private PumpsPanel() {}

  public static CaseTableView make(
      Selection selection, ViewSettings view, SolveService solve, Consumer<Working> showWorking) {
    return new CaseTableView("pumps", model(selection, view, solve, showWorking));
  }

  static CaseTableModel model(
      Selection selection, ViewSettings view, SolveService solve, Consumer<Working> showWorking) {
    return new CaseTableModel(selection, view, solve, showWorking, PumpFigures::of, EMPTY);
  }
}
