package tankyard.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicInteger;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import tankyard.app.example.Pictures;
import tankyard.engine.units.LiquidRate;

@ExtendWith(ApplicationExtension.class)
class FormViewTest {
  private final Notebook notebook = new Notebook();
  private final AtomicInteger undone = new AtomicInteger();

  @Start
  void start(Stage stage) {
    stage.setScene(Pictures.scene(new FormView(notebook.form), 360, 400, false));
    stage
        .getScene()
        .getAccelerators()
        .put(KeyCombination.valueOf("Shortcut+Z"), () -> undone.incrementAndGet());
    stage.show();
  }

  @AfterEach
  void letGo(FxRobot robot) {
    robot.release(new KeyCode[] {});
  }

  private static void type(FxRobot robot, String id, String text) {
    robot.clickOn("#" + id);
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write(text);
  }

  private static Label error(FxRobot robot, String id) {
    return robot.lookup("#" + id + "-error").queryAs(Label.class);
  }

  @Test
  void enterTakesWhatWasTyped(FxRobot robot) {
    type(robot, "page-oil", "5 bbl/d");
    robot.push(KeyCode.ENTER);
    assertThat(notebook.page.oil()).isEqualTo(LiquidRate.ofBarrelsPerDay(5));
  }

  @Test
  void leavingWithTabTakesWhatWasTypedAndGoesToTheNextField(FxRobot robot) {
    type(robot, "page-oil", "5");
    robot.push(KeyCode.TAB);
    assertThat(notebook.page.oil()).isEqualTo(LiquidRate.ofBarrelsPerDay(5));
    assertThat(robot.lookup("#page-runs").queryAs(TextField.class).isFocused()).isTrue();
  }

  @Test
  void theReasonStandsBesideTheFieldAndTheTextStays(FxRobot robot) {
    assertThat(error(robot, "page-oil").isVisible()).isFalse();
    type(robot, "page-oil", "lots");
    robot.push(KeyCode.ENTER);
    assertThat(error(robot, "page-oil").isVisible()).isTrue();
    assertThat(error(robot, "page-oil").getText()).contains("\"lots\"").contains("bbl/d");
    assertThat(robot.lookup("#page-oil").queryAs(TextField.class).getText()).isEqualTo("lots");
  }

  @Test
  void undoMeansTheLastStepOnceTheFieldIsTaken(FxRobot robot) {
    type(robot, "page-oil", "5 bbl/d");
    robot.push(KeyCode.ENTER);
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertThat(undone).hasValue(1);
  }

  @Test
  void undoMeansTheLastLetterWhileTyping(FxRobot robot) {
    type(robot, "page-oil", "5 bbl/d");
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertThat(undone).hasValue(0);
  }

  @Test
  void escapePutsBackWhatWasThere(FxRobot robot) {
    type(robot, "page-oil", "lots");
    robot.push(KeyCode.ESCAPE);
    assertThat(robot.lookup("#page-oil").queryAs(TextField.class).getText()).isEqualTo("3 bbl/d");
    assertThat(notebook.names).isEmpty();
  }

  @Test
  void theCrossGoesBackToWhatIsAssumed(FxRobot robot) {
    type(robot, "page-runs", "8 h");
    robot.push(KeyCode.ENTER);
    assertThat(notebook.page.runs()).isPresent();
    robot.clickOn("#page-runs-clear");
    assertThat(notebook.page.runs()).isEmpty();
    TextField field = robot.lookup("#page-runs").queryAs(TextField.class);
    assertThat(field.getPromptText()).isEqualTo("24 h assumed");
  }

  @Test
  void theKeyboardChoosesFromAList(FxRobot robot) {
    robot.clickOn("#page-joints");
    robot.push(KeyCode.TAB);
    robot.push(KeyCode.DOWN);
    assertThat(notebook.page.colour()).isEqualTo(Notebook.Colour.BLUE);
  }
}
