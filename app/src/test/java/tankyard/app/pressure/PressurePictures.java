package tankyard.app.pressure;

import java.util.List;
import tankyard.app.example.Desk;
import tankyard.app.example.Pictures;
import tankyard.app.example.SmallAnswer;
import tankyard.app.example.SmallLease;
import tankyard.app.example.SmallWindow;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.window.Window;

/** Pictures of the window in each of its states. */
public final class PressurePictures {
  private PressurePictures() {}

  public static void take(Pictures pictures, boolean dark) {
    picture(pictures, "pressure-open", List.of(SmallWindow.open()), dark);
    picture(pictures, "pressure-closed", List.of(SmallWindow.closed()), dark);
    picture(pictures, "pressure-unknown", List.of(SmallWindow.unknown()), dark);
    picture(pictures, "pressure-empty", List.of(), dark);
    cures(pictures, dark);
  }

  private static void cures(Pictures pictures, boolean dark) {
    Desk desk = new Desk();
    CuresViewModel model = new CuresViewModel(desk.selection, desk.view, desk.cures);
    CuresView view = new CuresView(model);
    model.ask();
    pictures.take("pressure-cures", view, 640, 300, dark);
  }

  private static void picture(Pictures pictures, String name, List<Window> windows, boolean dark) {
    Desk desk = new Desk(SmallLease.lease(), lease -> with(lease, windows));
    PressureView view =
        new PressureView(
            new PressureViewModel(desk.selection, desk.view, desk.solve, desk.shown::add),
            new CuresViewModel(desk.selection, desk.view, desk.cures));
    pictures.take(name, view, 1240, 300, dark);
  }

  static LeaseAnswer with(tankyard.engine.lease.Lease lease, List<Window> windows) {
    LeaseAnswer answer = SmallAnswer.of(lease);
    return new LeaseAnswer(
        lease,
        answer.cases(),
        windows,
        answer.yard(),
        answer.choices(),
        answer.outlook(),
        answer.findings(),
        answer.bill(),
        answer.diagnoses(),
        answer.assumptions());
  }
}
