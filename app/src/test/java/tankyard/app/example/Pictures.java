package tankyard.app.example;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import tankyard.app.memory.Memory;
import tankyard.app.style.Look;
import tankyard.app.style.Shade;

/** Takes pictures of panels, to be looked at by a person. */
public final class Pictures {
  private final Path folder;

  public Pictures(Path folder) {
    this.folder = folder;
  }

  /** Shows a panel in a window of its own and takes its picture. On the window's thread. */
  public void take(String name, Parent panel, double width, double height, boolean dark) {
    Stage stage = new Stage();
    stage.setScene(scene(panel, width, height, dark));
    stage.show();
    panel.applyCss();
    panel.layout();
    write(stage.getScene().snapshot(null), name + (dark ? "-dark" : "-light"));
    stage.close();
  }

  public static Scene scene(Parent panel, double width, double height, boolean dark) {
    Scene scene = new Scene(panel, width, height);
    Look look = new Look(Memory.forgetful());
    look.shadeProperty().set(dark ? Shade.DARK : Shade.LIGHT);
    look.dress(scene);
    return scene;
  }

  private void write(WritableImage image, String name) {
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    int[] pixels = new int[width * height];
    image
        .getPixelReader()
        .getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    picture.setRGB(0, 0, width, height, pixels, 0, width);
    try {
      Files.createDirectories(folder);
      ImageIO.write(picture, "png", folder.resolve(name + ".png").toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
