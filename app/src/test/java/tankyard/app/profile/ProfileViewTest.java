package tankyard.app.profile;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.control.Label;
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
class ProfileViewTest {
  private final Desk desk = new Desk();

  @Start
  void start(Stage stage) {
    ProfileView view = new ProfileView(new ProfileViewModel(desk.selection, desk.view, desk.solve));
    stage.setScene(Pictures.scene(view, 1100, 300, false));
    stage.show();
  }

  private static Label readOut(FxRobot robot) {
    return robot.lookup("#profile-read-out").queryAs(Label.class);
  }

  @Test
  void thePointerReadsOut(FxRobot robot) {
    robot.moveTo("#profile-plot");
    assertThat(readOut(robot).isVisible()).isTrue();
    assertThat(readOut(robot).getText()).startsWith("At ").contains("ground").contains("pipe");
  }

  @Test
  void theArrowKeysReadOut(FxRobot robot) {
    robot.clickOn("#profile-plot");
    robot.push(KeyCode.HOME);
    assertThat(readOut(robot).getText()).startsWith("At 0 ft").endsWith("12.4 psi");
    robot.push(KeyCode.RIGHT);
    assertThat(readOut(robot).getText()).startsWith("At 6 ft");
  }

  @Test
  void theKeyboardChoosesTheLine(FxRobot robot) {
    robot.interact(() -> robot.lookup("#profile-line").query().requestFocus());
    robot.push(KeyCode.DOWN);
    assertThat(desk.selection.single()).contains("L1");
  }
}
