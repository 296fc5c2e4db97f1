package tankyard.app.pressure;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import tankyard.app.example.Desk;
import tankyard.app.example.Pictures;

@ExtendWith(ApplicationExtension.class)
class PressureViewTest {
  private final Desk desk = new Desk();

  @Start
  void start(Stage stage) {
    PressureView view =
        new PressureView(
            new PressureViewModel(desk.selection, desk.view, desk.solve, desk.shown::add),
            new CuresViewModel(desk.selection, desk.view, desk.cures));
    stage.setScene(Pictures.scene(view, 1240, 320, false));
    stage.show();
  }

  private static Hyperlink link(FxRobot robot, String words) {
    return robot
        .lookup(n -> n instanceof Hyperlink link && link.getText().equals(words))
        .queryAs(Hyperlink.class);
  }

  @Test
  void showsTheBarWithBothEndsNamedAndTheVerdict(FxRobot robot) {
    Node bar = robot.lookup("#window-S1").query();
    assertThat(bar.getBoundsInParent().getHeight()).isGreaterThan(WindowBar.BAR_HEIGHT);
    assertThat(link(robot, "14.5 psi").isVisible()).isTrue();
    assertThat(link(robot, "26.0 psi").isVisible()).isTrue();
    assertThat(robot.lookup("#verdict-S1").queryAs(Label.class).getText())
        .startsWith("Set the regulator to 15.4 psi");
  }

  @Test
  void theLeastStandsWhereTheWindowBegins(FxRobot robot) {
    Node open = robot.lookup(".window-bar .bar-open").query();
    Node margin = robot.lookup(".window-bar .bar-margin").query();
    double gap = open.getBoundsInParent().getMinX() - margin.getBoundsInParent().getMaxX();
    assertThat(Math.abs(gap)).isLessThan(1.5);
  }

  @Test
  void aNumberShowsItsWorking(FxRobot robot) {
    robot.clickOn(link(robot, "14.5 psi"));
    assertThat(desk.shown).hasSize(1);
    assertThat(desk.shown.get(0).title()).isEqualTo("crest 126 ft out on Line 6");
  }

  @Test
  void aNamePicksTheThing(FxRobot robot) {
    robot.clickOn(link(robot, "Well 3's stuffing box"));
    assertThat(desk.selection.single()).contains("W3");
  }

  @Test
  void aLineOfTheTablePicksTheThing(FxRobot robot) {
    robot.clickOn("inlet of Water tank 1");
    assertThat(desk.selection.single()).contains("WT1");
  }
}
