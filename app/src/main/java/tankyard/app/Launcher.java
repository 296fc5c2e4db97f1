package tankyard.app;

import javafx.application.Application;

/**
 * Starts the program. It does not extend {@link Application}: such a class can't be started from
 * the class path.
 */
public final class Launcher {
  private Launcher() {}

  public static void main(String[] args) {
    Application.launch(App.class, args);
  }
}
