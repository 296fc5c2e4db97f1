package tankyard.app;

import java.nio.file.Path;
import javafx.application.Platform;
import tankyard.app.example.Pictures;
import tankyard.app.pressure.PressurePictures;

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
          }
          Platform.exit();
        });
  }
}
