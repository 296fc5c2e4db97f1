package tankyard.app.sums;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import tankyard.app.example.Pictures;
import tankyard.engine.quick.sums.AllSums;
import tankyard.engine.working.Working;

@ExtendWith(ApplicationExtension.class)
class SumsViewTest {
  private final List<Working> shown = new ArrayList<>();
  private final SumsViewModel model = new SumsViewModel(AllSums.list(), shown::add);

  @Start
  void start(Stage stage) {
    stage.setScene(Pictures.scene(new SumsView(model), 980, 620, false));
    stage.show();
  }

  @Test
  void typedWithTheKeyboardItAnswers(FxRobot robot) {
    robot.clickOn("#sum-pipe-loss-rate");
    robot.write("216 bbl/d");
    robot.push(KeyCode.TAB);
    robot.write("2000 ft");
    robot.push(KeyCode.TAB);
    robot.write("1.94 in");
    robot.push(KeyCode.ENTER);
    assertThat(model.answerProperty().get().numbers()).isNotEmpty();
    robot.clickOn(".sums-chief");
    assertThat(shown).hasSize(1);
  }

  @Test
  void aSumIsPickedFromTheList(FxRobot robot) {
    robot.clickOn(AllSums.find("running-rate").orElseThrow().title());
    assertThat(model.pickedProperty().get().id()).isEqualTo("running-rate");
  }

  @Test
  void theExampleIsTypedByAButton(FxRobot robot) {
    robot.clickOn("#sums-example");
    assertThat(robot.lookup(".sums-chief").tryQuery()).isPresent();
  }
}
