package tankyard.app.map;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javafx.scene.SnapshotParameters;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.transform.Scale;
import javax.imageio.ImageIO;
import tankyard.app.map.plan.Camera;

/** The map as a PNG picture, drawn anew at twice the screen's fineness. */
public final class MapPicture {
  private static final double FINER = 2;

  private final MapView view;
  private final MapViewModel map;

  public MapPicture(MapView view, MapViewModel map) {
    this.view = view;
    this.map = map;
  }

  /** Writes what the map shows. */
  public void write(Path file) throws IOException {
    WritableImage image = draw(map.desk().camera());
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    int[] pixels = new int[width * height];
    image
        .getPixelReader()
        .getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    picture.setRGB(0, 0, width, height, pixels, 0, width);
    if (!ImageIO.write(picture, "png", file.toFile())) {
      throw new IOException("This Java can't write PNG pictures.");
    }
  }

  private WritableImage draw(Camera camera) {
    Canvas canvas = new Canvas(camera.widthPx(), camera.heightPx());
    view.paint(canvas.getGraphicsContext2D(), camera);
    SnapshotParameters parameters = new SnapshotParameters();
    parameters.setTransform(new Scale(FINER, FINER));
    return canvas.snapshot(parameters, null);
  }
}
