package tankyard.app.picture;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ListView;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import tankyard.app.Studio;
import tankyard.app.edit.Replace;
import tankyard.app.edit.SetStatus;
import tankyard.app.files.WindowDialogs;
import tankyard.app.style.Look;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.InjectionWellBuilder;
import tankyard.engine.lease.Status;
import tankyard.engine.leasefile.LeaseFileException;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Time;

/** Every pane, sheet and small window of the studio, as docs/screens-checklist.md lists them. */
final class PaneShots {
  private static final List<String> PANES =
      List.of("findings", "window", "profile", "tanks", "injection", "ahead", "bill");
  private static final List<String> THINGS =
      List.of("W1", "T1", "S1", "OT1", "WT1", "P1", "IW1", "WL1", "PP1", "BM1", "LM1");

  /** Those whose sheets are longer than a window: their lower end is taken too. */
  private static final List<String> LONG = List.of("W1", "S1", "WT1", "P1", "IW1", "BM1");

  private final Look look;

  PaneShots(Look look) {
    this.look = look;
  }

  List<Shot> list() {
    List<Shot> shots = new ArrayList<>();
    for (String pane : PANES) {
      shots.add(new Shot("pane-" + pane, show(pane)));
      shots.add(new Shot("empty-" + pane, Studio::openEmpty, show(pane)));
    }
    THINGS.forEach(id -> shots.add(new Shot("sheet-" + id, pick(id))));
    LONG.forEach(
        id -> {
          shots.add(new Shot("end-of-" + id, pick(id), PaneShots::goToTheEnd));
          shots.add(
              new Shot(
                  "metric-end-of-" + id,
                  pick(id).andThen(s -> press(s, "#units-metric")),
                  PaneShots::goToTheEnd));
        });
    shots.add(new Shot("end-of-lease", s -> {}, PaneShots::goToTheEnd));
    shots.add(
        new Shot("shared-well", pick("IW1").andThen(PaneShots::share), PaneShots::goToTheEnd));
    shots.add(new Shot("berm-near", pick("BM2"), s -> s.map().actions().zoomToPicked()));
    shots.add(new Shot("gun-barrel", PaneShots::openOldWindmill, PaneShots::lookAtTheGunBarrel));
    shots.add(new Shot("metric", show("window"), s -> press(s, "#units-metric")));
    shots.add(new Shot("removed", pick("W1"), PaneShots::takeAway));
    shots.add(new Shot("battery", pick("S1"), s -> s.map().actions().zoomToPicked()));
    shots.add(new Shot("field-error", pick("W1"), PaneShots::typeNonsense));
    shots.add(new Shot("finding-picked", show("findings"), PaneShots::pickAFinding));
    shots.add(new Shot("small-working", show("tanks"), s -> press(s, "#tanks .figure-link")));
    shots.add(new Shot("small-sums", s -> choose(s, "sums")));
    shots.add(new Shot("small-unsaved", this::askUnsaved));
    shots.add(new Shot("welcome", s -> choose(s, "start-page")));
    return shots;
  }

  private static Consumer<Studio> show(String pane) {
    return s -> s.frame().strip().show(pane);
  }

  private static Consumer<Studio> pick(String id) {
    return s -> s.map().desk().selection().select(id);
  }

  private static void goToTheEnd(Studio studio) {
    ((ScrollPane) found(studio, "#sheet .scroll-pane")).setVvalue(1);
  }

  private static void share(Studio studio) {
    InjectionWell well = studio.store().lease().injectionWells().get(0);
    studio
        .store()
        .edit(
            Replace.of(
                InjectionWellBuilder.builder(well)
                    .otherRate(Optional.of(LiquidRate.ofBarrelsPerDay(150)))
                    .otherHours(Optional.of(Time.ofHours(10)))
                    .build(),
                "shared"));
  }

  private static void openOldWindmill(Studio studio) {
    try {
      studio.store().open(LeaseFiles.read(Path.of("../docs/examples/p4-old-windmill.lease.json")));
    } catch (LeaseFileException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void lookAtTheGunBarrel(Studio studio) {
    show("tanks").andThen(pick("GB1")).accept(studio);
    studio.map().actions().zoomToPicked();
  }

  private static void takeAway(Studio studio) {
    studio.store().edit(SetStatus.of(List.of("W1"), Status.REMOVE));
  }

  private static void press(Studio studio, String selector) {
    ((ButtonBase) found(studio, selector)).fire();
  }

  private static void choose(Studio studio, String action) {
    MenuBar bar = (MenuBar) found(studio, "#menu-bar");
    bar.getMenus().stream()
        .flatMap(m -> m.getItems().stream())
        .filter(i -> ("menu-" + action).equals(i.getId()))
        .findFirst()
        .ifPresent(MenuItem::fire);
  }

  private static void typeNonsense(Studio studio) {
    TextField field = (TextField) found(studio, "#well-water");
    field.requestFocus();
    field.setText("plenty");
    field.fireEvent(
        new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.ENTER, false, false, false, false));
  }

  private static void pickAFinding(Studio studio) {
    ((ListView<?>) found(studio, "#findings-list")).getSelectionModel().select(0);
  }

  /** Asked later, since the question waits for its answer. */
  private void askUnsaved(Studio studio) {
    WindowDialogs dialogs = new WindowDialogs(() -> studio.window().getScene().getWindow(), look);
    Platform.runLater(() -> dialogs.askUnsaved(studio.store().lease().name()));
  }

  private static Node found(Studio studio, String selector) {
    Node node = studio.window().lookup(selector);
    if (node == null) {
      throw new IllegalStateException("Nothing in the window is " + selector);
    }
    return node;
  }
}
