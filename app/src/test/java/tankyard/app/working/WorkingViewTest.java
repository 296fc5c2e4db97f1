package tankyard.app.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import tankyard.app.example.Pictures;

@ExtendWith(ApplicationExtension.class)
class WorkingViewTest {
  private final List<String> clipboard = new ArrayList<>();
  private final WorkingViewModel model = new WorkingViewModel(clipboard::add);

  @Start
  void start(Stage stage) {
    model.open(WorkingViewModelTest.LOSS);
    stage.setScene(Pictures.scene(new WorkingView(model), 480, 460, false));
    stage.show();
  }

  private static String text(FxRobot robot, String id) {
    return robot.lookup("#" + id).queryAs(Label.class).getText();
  }

  @Test
  void showsFormulaInputsAndResult(FxRobot robot) {
    assertThat(text(robot, "working-title")).isEqualTo("Loss in the dump valve");
    assertThat(text(robot, "working-result")).isEqualTo("1.158 psi");
    assertThat(robot.lookup("#working-formula").queryAs(TextArea.class).getText())
        .isEqualTo("dp = SG*(Q/Cv)^2");
  }

  @Test
  void anInputLeadsToItsOwnWorkingAndBack(FxRobot robot) {
    robot.clickOn("design water rate");
    assertThat(text(robot, "working-title")).isEqualTo("design water rate");
    robot.clickOn("#working-back");
    assertThat(text(robot, "working-title")).isEqualTo("Loss in the dump valve");
  }

  @Test
  void isCopiedAsText(FxRobot robot) {
    robot.clickOn("#working-copy");
    assertThat(clipboard.get(0)).contains("dp = SG*(Q/Cv)^2 = 1.158 psi");
  }
}
