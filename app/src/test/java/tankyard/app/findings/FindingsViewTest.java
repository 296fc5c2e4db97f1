package tankyard.app.findings;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import tankyard.app.example.Desk;
import tankyard.app.example.Pictures;

@ExtendWith(ApplicationExtension.class)
class FindingsViewTest {
  private final Desk desk = new Desk();

  @Start
  void start(Stage stage) {
    FindingsViewModel model = new FindingsViewModel(desk.selection, desk.solve, desk.shown::add);
    stage.setScene(Pictures.scene(new FindingsView(model), 1200, 300, false));
    stage.show();
  }

  @Test
  void aClickPicksTheThingAndShowsTheWayOut(FxRobot robot) {
    robot.clickOn("Oil tank 1: 182 bbl usable, and 222 bbl must find room while the road is out.");
    assertThat(desk.selection.single()).contains("OT1");
    assertThat(robot.lookup("#finding-detail .finding-way").queryAll()).hasSize(2);
  }

  @Test
  void theKeyboardGoesThroughTheList(FxRobot robot) {
    robot.clickOn("Well 2 has no way to a separator.");
    robot.push(KeyCode.DOWN);
    assertThat(desk.selection.single()).contains("OT1");
  }

  @Test
  void theNumberShowsItsWorking(FxRobot robot) {
    robot.clickOn("Well 2 has no way to a separator.");
    robot.push(KeyCode.DOWN);
    robot.clickOn("#finding-working");
    assertThat(desk.shown.get(0).title()).isEqualTo("Oil room needed");
  }

  @Test
  void aSeverityCanBeHidden(FxRobot robot) {
    robot.clickOn("#findings-look");
    assertThat(robot.lookup("#findings-list").queryAs(ListView.class).getItems()).hasSize(3);
  }

  @Test
  void severityIsASignAndAWord(FxRobot robot) {
    assertThat(
            robot.lookup(".severity.severity-stop").queryAllAs(Label.class).stream()
                .map(Label::getText))
        .containsOnly("✕ stop");
  }
}
