package tankyard.app;

import java.nio.file.Path;
import javafx.application.Platform;
import tankyard.app.example.Desk;
import tankyard.app.example.Pictures;
import tankyard.app.pressure.PressurePictures;
import tankyard.app.pumps.PumpsPanel;
import tankyard.app.tanks.TanksPanel;

/** Takes pictures of all panels, light and dark, into a folder. */
public final class PanelPictures {
  private PanelPictures() {}

  public static void main(String[] arguments) {
    Pictures pictures =
        new Pictures(Path.of(arguments.length > 0 ? arguments[0] : "target/pictures"));
    Platform.startup(
        () -> {
          for (boolean dark : new boolean[] {false, true}) {
            PressurePictures.take(pictures, dark);
            tankyard.app.findings.FindingsPictures.take(pictures, dark);
            take(pictures, dark);
            tankyard.app.sums.SumsPictures.take(pictures, dark);
            tankyard.app.takeoff.TakeoffPictures.take(pictures, dark);
            tankyard.app.sheet.SheetPictures.take(pictures, dark);
            tankyard.app.profile.ProfilePictures.take(pictures, dark);
            tankyard.app.working.WorkingPictures.take(pictures, dark);
          }
          Platform.exit();
        });
  }

  private static void take(Pictures pictures, boolean dark) {
    Desk desk = new Desk();
    pictures.take(
        "tanks",
        TanksPanel.make(desk.selection, desk.view, desk.solve, desk.shown::add),
        1240,
        300,
        dark);
    pictures.take(
        "pumps",
        PumpsPanel.make(desk.selection, desk.view, desk.solve, desk.shown::add),
        1240,
        300,
        dark);
  }
}
