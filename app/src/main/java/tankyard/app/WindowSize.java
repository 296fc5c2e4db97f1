package tankyard.app;

import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;
import tankyard.app.memory.Memory;

/** Brings the window back in the size it was left. */
final class WindowSize {
  private static final String KEY = "window.size";
  private static final double USUAL_WIDTH = 1440;
  private static final double USUAL_HEIGHT = 900;

  private final Memory memory;

  WindowSize(Memory memory) {
    this.memory = memory;
  }

  void apply(Stage stage) {
    Rectangle2D screen = Screen.getPrimary().getVisualBounds();
    double width = Math.min(USUAL_WIDTH, screen.getWidth());
    double height = Math.min(USUAL_HEIGHT, screen.getHeight());
    String[] kept = memory.get(KEY).orElse("").split(" ", -1);
    if (kept.length == 3 && kept[0].matches("\\d{3,5}") && kept[1].matches("\\d{3,5}")) {
      width = Math.min(Integer.parseInt(kept[0]), screen.getWidth());
      height = Math.min(Integer.parseInt(kept[1]), screen.getHeight());
      stage.setMaximized(kept[2].equals("full"));
    }
    stage.setWidth(width);
    stage.setHeight(height);
    stage.setOnHiding(e -> keep(stage));
  }

  private void keep(Stage stage) {
    memory.put(
        KEY,
        Math.round(stage.getWidth())
            + " "
            + Math.round(stage.getHeight())
            + (stage.isMaximized() ? " full" : " part"));
  }
}
