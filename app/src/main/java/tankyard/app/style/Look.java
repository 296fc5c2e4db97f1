package tankyard.app.style;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import atlantafx.base.theme.Theme;
import java.util.Objects;
import javafx.application.Application;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import tankyard.app.memory.Memory;

/** How the whole window looks: the base theme, our own style sheet on top, light or dark. */
public final class Look {
  private static final String KEY = "style.shade";

  private final ObjectProperty<Shade> shade = new SimpleObjectProperty<>(this, "shade");

  public Look(Memory memory) {
    shade.set(memory.get(KEY).map(Shade::of).orElse(Shade.LIGHT));
    shade.addListener((o, before, after) -> memory.put(KEY, after.word()));
  }

  public Shade shade() {
    return shade.get();
  }

  public ObjectProperty<Shade> shadeProperty() {
    return shade;
  }

  /** Dresses a scene and keeps it in the chosen shade. */
  public void dress(Scene scene) {
    scene.getStylesheets().setAll(sheet("studio.css"), sheet(shade.get().word() + ".css"));
    setTheme();
    shade.addListener(
        (o, before, after) -> {
          setTheme();
          scene.getStylesheets().setAll(sheet("studio.css"), sheet(after.word() + ".css"));
        });
  }

  private void setTheme() {
    Theme theme = shade.get() == Shade.DARK ? new PrimerDark() : new PrimerLight();
    Application.setUserAgentStylesheet(theme.getUserAgentStylesheetBSS());
  }

  private static String sheet(String name) {
    return Objects.requireNonNull(Look.class.getResource(name), name).toExternalForm();
  }
}
