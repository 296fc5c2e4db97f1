package tankyard.app.ahead;

import java.util.function.Consumer;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ViewSettings;
import tankyard.app.figures.CaseTableModel;
import tankyard.app.figures.CaseTableView;
import tankyard.app.solve.SolveService;
import tankyard.engine.working.Working;

/** The panel of what runs out next. */
public final class AheadPanel {
  private static final String EMPTY =
      "Type in the lease's practice in what time the water doubles: then this says in which month"
          + " the pumps, the injection wells, the tanks, the overflows and the window run out.";

  private AheadPanel() {}

  public static CaseTableView make(
      Selection selection, ViewSettings view, SolveService solve, Consumer<Working> showWorking) {
    return new CaseTableView("ahead", model(selection, view, solve, showWorking));
  }

  static CaseTableModel model(
      Selection selection, ViewSettings view, SolveService solve, Consumer<Working> showWorking) {
    return new CaseTableModel(selection, view, solve, showWorking, EMPTY, AheadFigures::of);
  }
}
