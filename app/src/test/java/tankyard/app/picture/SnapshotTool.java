package tankyard.app.picture;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.transform.Transform;
import javafx.stage.Stage;
import javafx.stage.Window;
import javax.imageio.ImageIO;
import tankyard.app.Studio;
import tankyard.app.example.TestWorld;
import tankyard.app.memory.Memory;
import tankyard.app.style.Look;
import tankyard.app.style.Shade;
import tankyard.engine.catalog.Catalogs;
import tankyard.engine.lease.Lease;

/** Takes pictures of the studio on its demo lease, to be looked at by people. */
final class SnapshotTool {
  private static final int PULSES = 6;

  private final Path folder;
  private final Lease lease;

  private SnapshotTool(Path folder) throws IOException {
    this.folder = Files.createDirectories(folder);
    this.lease = Studio.firstLease(Catalogs.find());
    Platform.startup(() -> {});
    Platform.setImplicitExit(false); // The window closes between two pictures.
  }

  /** The pictures of the manual. */
  static void takeForTheManual(Path folder) throws Exception {
    SnapshotTool tool = new SnapshotTool(folder);
    tool.manual("studio-light", Shade.LIGHT, s -> s.frame().strip().show("profile"));
    tool.manual("studio-dark", Shade.DARK, s -> s.frame().strip().show("tanks"));
    tool.manual("studio-window", Shade.LIGHT, s -> s.frame().strip().show("window"));
    tool.manual("studio-bill", Shade.LIGHT, s -> s.frame().strip().show("bill"));
    tool.manual("studio-window-dark", Shade.DARK, s -> s.frame().strip().show("window"));
    tool.manual("studio-bill-dark", Shade.DARK, s -> s.frame().strip().show("bill"));
    tool.manual("studio-battery", Shade.LIGHT, SnapshotTool::near);
    tool.manual("studio-empty", Shade.LIGHT, Studio::openEmpty);
  }

  /**
   * Every pane in light and dark, at 125 % and in a small window.
   *
   * @param part only those whose name has this in it
   */
  static void takeEveryPane(Path folder, String part) throws Exception {
    SnapshotTool tool = new SnapshotTool(folder);
    for (Screen screen : List.of(Screen.USUAL, Screen.LARGER, Screen.SMALL)) {
      for (Shade shade : Shade.values()) {
        Look look = look(shade);
        for (Shot shot : new PaneShots(look).list()) {
          String name = shot.name() + "-" + shade.name().toLowerCase(Locale.ROOT) + screen.name();
          if (name.contains(part)) {
            tool.take(name, look, screen, shot);
          }
        }
      }
    }
  }

  private void manual(String name, Shade shade, Consumer<Studio> prepare) throws Exception {
    take(name, look(shade), Screen.USUAL, new Shot(name, prepare));
  }

  private static void near(Studio studio) {
    studio.map().desk().selection().select(studio.store().lease().separators().get(0).id());
    studio.map().actions().zoomToPicked();
  }

  private static Look look(Shade shade) {
    Look look = new Look(Memory.forgetful());
    look.shadeProperty().set(shade);
    return look;
  }

  private void take(String name, Look look, Screen screen, Shot shot) throws Exception {
    Studio[] studio = new Studio[1];
    onWindow(
        () -> {
          studio[0] = TestWorld.studio(look, Runnable::run);
          show(studio[0], look, screen);
          studio[0].store().open(lease);
          studio[0].mapPane().view().requestFocus();
          shot.first().accept(studio[0]);
        });
    settle();
    onWindow(() -> shot.then().accept(studio[0]));
    settle();
    onWindow(
        () -> {
          write(newest().getScene(), screen.scale(), folder.resolve(name + ".png"));
          List.copyOf(Window.getWindows()).forEach(Window::hide);
        });
    settle();
  }

  private static void show(Studio studio, Look look, Screen screen) {
    Scene scene = new Scene(studio.window(), screen.width(), screen.height());
    look.dress(scene);
    Stage stage = new Stage();
    stage.setScene(scene);
    stage.show();
  }

  /** Lets the pulses pass: a person looks at the result, no test waits on it. */
  private static void settle() throws Exception {
    for (int i = 0; i < PULSES; i++) {
      Thread.sleep(50);
      onWindow(() -> {});
    }
  }

  private static Window newest() {
    List<Window> windows = Window.getWindows();
    return windows.get(windows.size() - 1);
  }

  private static void write(Scene scene, double scale, Path file) {
    SnapshotParameters parameters = new SnapshotParameters();
    parameters.setTransform(Transform.scale(scale, scale));
    WritableImage image = scene.getRoot().snapshot(parameters, null);
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    int[] pixels = new int[width * height];
    image
        .getPixelReader()
        .getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    picture.setRGB(0, 0, width, height, pixels, 0, width);
    try {
      ImageIO.write(picture, "png", file.toFile());
    } catch (IOException e) {
      throw new IllegalStateException("No picture could be written to " + file, e);
    }
  }

  private static void onWindow(Runnable job) throws Exception {
    CountDownLatch done = new CountDownLatch(1);
    Throwable[] failed = new Throwable[1];
    Platform.runLater(
        () -> {
          try {
            job.run();
          } catch (RuntimeException | Error e) {
            failed[0] = e;
          } finally {
            done.countDown();
          }
        });
    if (!done.await(60, TimeUnit.SECONDS)) {
      throw new IllegalStateException("The window hangs");
    }
    Optional<Throwable> failure = Optional.ofNullable(failed[0]);
    if (failure.isPresent()) {
      throw new IllegalStateException("The picture could not be prepared", failure.get());
    }
  }
}
