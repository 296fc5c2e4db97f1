package tankyard.app.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import tankyard.app.example.Desk;
import tankyard.app.example.Pictures;

@ExtendWith(ApplicationExtension.class)
class TakeoffViewTest {
  private final Desk desk = new Desk();
  private final List<String> clipboard = new ArrayList<>();
  private final List<String> files = new ArrayList<>();

  @Start
  void start(Stage stage) {
    TakeoffViewModel model =
        new TakeoffViewModel(
            desk.selection,
            desk.solve,
            desk.shown::add,
            clipboard::add,
            (name, text) -> files.add(name));
    stage.setScene(Pictures.scene(new TakeoffView(model), 1400, 320, false));
    stage.show();
  }

  @Test
  void aLinePicksItsThing(FxRobot robot) {
    robot.clickOn("Strainer 2 in");
    assertThat(desk.selection.single()).contains("L6");
  }

  @Test
  void theTotalShowsItsWorking(FxRobot robot) {
    robot.clickOn("#bill-total");
    assertThat(desk.shown).hasSize(1);
  }

  @Test
  void theButtonsCopyAndSave(FxRobot robot) {
    robot.clickOn("#bill-copy");
    robot.clickOn("#bill-export");
    assertThat(clipboard).hasSize(1);
    assertThat(files).containsExactly("bill.csv");
  }
}
