package tankyard.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableCell;
import javafx.scene.layout.HBox;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import tankyard.app.example.Desk;
import tankyard.app.example.Pictures;
import tankyard.app.findings.FindingsView;
import tankyard.app.findings.FindingsViewModel;
import tankyard.app.pressure.CuresViewModel;
import tankyard.app.pressure.PressureView;
import tankyard.app.pressure.PressureViewModel;
import tankyard.app.profile.ProfileView;
import tankyard.app.profile.ProfileViewModel;
import tankyard.app.pumps.PumpsPanel;
import tankyard.app.sheet.SheetView;
import tankyard.app.sheet.SheetViewModel;
import tankyard.app.takeoff.TakeoffView;
import tankyard.app.takeoff.TakeoffViewModel;
import tankyard.app.tanks.TanksPanel;
import tankyard.engine.catalog.Catalogs;

/** No words of a panel end in dots, at the usual size and with letters a quarter larger. */
@ExtendWith(ApplicationExtension.class)
class NothingCutOffTest {
  private final Desk desk = new Desk();
  private Stage stage;

  @Start
  void start(Stage shown) {
    stage = shown;
  }

  private List<String> cutOff(
      FxRobot robot, Supplier<Parent> make, double width, double height, int size) {
    List<String> found = new ArrayList<>();
    robot.interact(
        () -> {
          Parent panel = make.get();
          Scene scene = Pictures.scene(panel, width, height, false);
          panel.setStyle("-fx-font-size: " + size + "px");
          stage.setScene(scene);
          stage.show();
          panel.applyCss();
          panel.layout();
          collect(panel, found);
        });
    return found;
  }

  /** Cells of tables may be cut off: their columns can be drawn wider. */
  private static void collect(Node node, List<String> found) {
    if (node instanceof TableCell) {
      return;
    }
    if (node instanceof Labeled labeled && isShown(labeled) && isCutOff(labeled)) {
      found.add(labeled.getText());
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, found));
    }
  }

  private static boolean isShown(Labeled labeled) {
    boolean inHead = labeled.getParent() != null && isTableHead(labeled.getParent());
    boolean hasWords = labeled.getText() != null && !labeled.getText().isEmpty();
    return labeled.isVisible() && hasWords && !inHead;
  }

  private static boolean isTableHead(Node node) {
    return node.getStyleClass().contains("column-header")
        || node.getParent() != null && isTableHead(node.getParent());
  }

  private static boolean isCutOff(Labeled labeled) {
    return labeled.lookup(".text") instanceof Text text
        && !text.getText().equals(labeled.getText());
  }

  private Parent sheet(String id) {
    desk.selection.select(id);
    return new SheetView(
        new SheetViewModel(
            desk.store,
            desk.selection,
            desk.view,
            desk.solve,
            Catalogs.find().catalog(),
            desk.shown::add));
  }

  @Test
  void aLabelTooNarrowForItsWordsIsFound(FxRobot robot) {
    assertThat(cutOff(robot, () -> new HBox(narrow()), 300, 100, 13))
        .containsExactly("far too long for its place");
  }

  private static Label narrow() {
    Label label = new Label("far too long for its place");
    label.setMaxWidth(60);
    return label;
  }

  @Test
  void inTheSheetOfEveryKind(FxRobot robot) {
    for (String id : List.of("W1", "T1", "S1", "OT1", "WT1", "P1", "IW1", "L6")) {
      assertThat(cutOff(robot, () -> sheet(id), 330, 2400, 13)).as(id).isEmpty();
      assertThat(cutOff(robot, () -> sheet(id), 412, 3000, 16)).as(id + ", larger").isEmpty();
    }
  }

  @Test
  void inThePanelsOfTheStrip(FxRobot robot) {
    for (Supplier<Parent> panel : panels()) {
      assertThat(cutOff(robot, panel, 900, 320, 13)).isEmpty();
      assertThat(cutOff(robot, panel, 1125, 400, 16)).as("larger letters").isEmpty();
    }
  }

  private List<Supplier<Parent>> panels() {
    return List.of(
        () ->
            new PressureView(
                new PressureViewModel(desk.selection, desk.view, desk.solve, desk.shown::add),
                new CuresViewModel(desk.selection, desk.view, desk.cures)),
        () -> new ProfileView(new ProfileViewModel(desk.selection, desk.view, desk.solve)),
        () -> new FindingsView(new FindingsViewModel(desk.selection, desk.solve, desk.shown::add)),
        () -> TanksPanel.make(desk.selection, desk.view, desk.solve, desk.shown::add),
        () -> PumpsPanel.make(desk.selection, desk.view, desk.solve, desk.shown::add),
        () ->
            new TakeoffView(
                new TakeoffViewModel(
                    desk.selection, desk.solve, desk.shown::add, t -> {}, (n, t) -> {})));
  }
}
