package tankyard.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import tankyard.app.example.Desk;
import tankyard.app.example.Pictures;
import tankyard.engine.lease.Well;
import tankyard.engine.units.LiquidRate;

@ExtendWith(ApplicationExtension.class)
class SheetViewTest {
  private final Desk desk = new Desk();

  @Start
  void start(Stage stage) {
    desk.selection.select("W1");
    stage.setScene(Pictures.scene(new SheetView(SheetPictures.model(desk)), 360, 900, false));
    stage.show();
  }

  private LiquidRate oil() {
    return ((Well) desk.store.lease().thing("W1").orElseThrow()).oil();
  }

  private static void type(FxRobot robot, String id, String text) {
    robot.clickOn("#" + id);
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write(text);
    robot.push(KeyCode.ENTER);
  }

  @Test
  void typingARateChangesTheLeaseAndUndoBringsItBack(FxRobot robot) {
    type(robot, "well-oil", "0.5 gpm");
    assertThat(oil().toGpm()).isEqualTo(0.5);
    robot.interact(desk.store::undo);
    assertThat(oil()).isEqualTo(LiquidRate.ofBarrelsPerDay(2));
    assertThat(robot.lookup("#well-oil").queryAs(TextField.class).getText()).isEqualTo("2 bbl/d");
  }

  @Test
  void nonsenseShowsTheReasonBesideTheFieldAndChangesNothing(FxRobot robot) {
    type(robot, "well-oil", "a lot");
    Label error = robot.lookup("#well-oil-error").queryAs(Label.class);
    Node field = robot.lookup("#well-oil").query();
    assertThat(error.isVisible()).isTrue();
    assertThat(error.getText()).contains("\"a lot\" is no number").contains("bbl/d");
    double gap =
        error.localToScene(error.getBoundsInLocal()).getMinY()
            - field.localToScene(field.getBoundsInLocal()).getMaxY();
    assertThat(gap).isBetween(0.0, 12.0);
    assertThat(oil()).isEqualTo(LiquidRate.ofBarrelsPerDay(2));
  }

  @Test
  void theKeyboardStaysInTheFieldWhileTheLeaseIsWorkedOutAnew(FxRobot robot) {
    type(robot, "well-oil", "5");
    assertThat(robot.lookup("#well-oil").query().isFocused()).isTrue();
  }

  @Test
  void tabGoesThroughTheFieldsFromTopToBottom(FxRobot robot) {
    robot.clickOn("#well-oil");
    robot.push(KeyCode.TAB);
    assertThat(robot.lookup("#well-water").query().isFocused()).isTrue();
    robot.push(KeyCode.TAB);
    assertThat(robot.lookup("#well-gas").query().isFocused()).isTrue();
  }

  @Test
  void theFootSaysWhyTheFieldMatters(FxRobot robot) {
    robot.clickOn("#well-oil");
    assertThat(robot.lookup("#sheet-hint").queryAs(Label.class).getText()).contains("run tickets");
  }

  @Test
  void anotherThingHasAnotherSheet(FxRobot robot) {
    robot.interact(() -> desk.selection.select("OT1"));
    assertThat(robot.lookup("#sheet-title").queryAs(Label.class).getText()).isEqualTo("Oil tank 1");
    assertThat(robot.lookup("#well-oil").tryQuery()).isEmpty();
  }
}
