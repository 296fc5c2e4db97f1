package tankyard.app.picture;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import tankyard.app.Studio;
import tankyard.app.edit.SetStatus;
import tankyard.app.example.SmallLease;
import tankyard.app.example.TestWorld;
import tankyard.app.memory.Memory;
import tankyard.app.style.Look;
import tankyard.app.style.Shade;
import tankyard.engine.catalog.Catalogs;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Status;
import tankyard.engine.leasefile.LeaseFiles;

/**
 * Takes pictures of the studio to be looked at by people. Arguments: the folder for the pictures,
 * then optionally a lease file.
 */
public final class SnapshotTool {
  private static final int WIDTH = 1440;
  private static final int HEIGHT = 900;

  private final Path folder;
  private final Lease lease;

  private SnapshotTool(Path folder, Lease lease) {
    this.folder = folder;
    this.lease = lease;
  }

  public static void main(String[] args) throws Exception {
    Path folder = Files.createDirectories(Path.of(args[0]));
    Lease lease = args.length > 1 ? LeaseFiles.read(Path.of(args[1])) : SmallLease.lease();
    Platform.startup(() -> {});
    Platform.setImplicitExit(false); // The window closes between two pictures.
    int exit = 1;
    try {
      new SnapshotTool(folder, lease).takeAll();
      exit = 0;
    } finally {
      System.exit(exit);
    }
  }

  private void takeAll() throws Exception {
    take("light", Shade.LIGHT, s -> {});
    take("dark", Shade.DARK, s -> {});
    take("window", Shade.LIGHT, s -> s.frame().strip().show("window"));
    take("bill", Shade.LIGHT, s -> s.frame().strip().show("bill"));
    take("tanks", Shade.DARK, s -> s.frame().strip().show("tanks"));
    take("profile", Shade.LIGHT, s -> s.frame().strip().show("profile"));
    take("picked", Shade.LIGHT, this::pick);
    take("near", Shade.LIGHT, this::near);
    take("empty", Shade.LIGHT, s -> s.store().open(nothing()));
  }

  /** The pictures of the manual, on the lease the program opens on. */
  static void takeForTheManual(Path folder) throws Exception {
    Platform.startup(() -> {});
    Platform.setImplicitExit(false);
    SnapshotTool tool =
        new SnapshotTool(Files.createDirectories(folder), Studio.firstLease(Catalogs.find()));
    tool.take("studio-light", Shade.LIGHT, s -> s.frame().strip().show("profile"));
    tool.take("studio-dark", Shade.DARK, s -> s.frame().strip().show("tanks"));
    tool.take("studio-window", Shade.LIGHT, s -> s.frame().strip().show("window"));
    tool.take("studio-bill", Shade.LIGHT, s -> s.frame().strip().show("bill"));
    tool.take("studio-battery", Shade.LIGHT, tool::near);
    tool.take("studio-empty", Shade.LIGHT, Studio::openEmpty);
  }

  private static Lease nothing() {
    return SmallLease.bare().withSpotHeights(List.of());
  }

  private void pick(Studio studio) {
    studio.store().edit(SetStatus.of(List.of(lease.wells().get(0).id()), Status.REMOVE));
    studio.map().desk().selection().select(lease.lines().get(lease.lines().size() - 1).id());
  }

  private void near(Studio studio) {
    studio.map().desk().selection().select(lease.separators().get(0).id());
    studio.map().actions().zoomToPicked();
  }

  private void take(String name, Shade shade, Consumer<Studio> prepare) throws Exception {
    Stage[] box = new Stage[1];
    onWindow(
        () -> {
          Look look = new Look(Memory.forgetful());
          look.shadeProperty().set(shade);
          Studio studio = TestWorld.studio(look, Runnable::run);
          Scene scene = new Scene(studio.window(), WIDTH, HEIGHT);
          look.dress(scene);
          box[0] = new Stage();
          box[0].setScene(scene);
          box[0].show();
          studio.store().open(lease);
          studio.mapPane().view().requestFocus();
          prepare.accept(studio);
        });
    for (int i = 0; i < 6; i++) {
      Thread.sleep(150); // Lets the pulses pass: a person looks at the result, no test waits on it.
      onWindow(() -> {});
    }
    onWindow(() -> write(box[0].getScene(), folder.resolve(name + ".png")));
    onWindow(() -> box[0].close());
  }

  private static void write(Scene scene, Path file) {
    WritableImage image = scene.snapshot(null);
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
