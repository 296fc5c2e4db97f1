package tankyard.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** The program as it starts for a person, in a real window. */
@Tag("window")
class RealWindowTest {
  @TempDir static Path home;
  private static String homeBefore;

  @BeforeAll
  static void aHomeOfItsOwn() throws Exception {
    homeBefore = System.setProperty("user.home", home.toString());
    FxToolkit.registerPrimaryStage();
    FxToolkit.setupApplication(App.class);
    WaitForAsyncUtils.waitForFxEvents();
  }

  @AfterAll
  static void close() throws Exception {
    FxToolkit.hideStage();
    System.setProperty("user.home", homeBefore);
  }

  @Test
  void the_studio_opens_on_the_demo_lease_with_the_size_it_should_have() {
    Stage stage = (Stage) Window.getWindows().get(0);
    assertThat(stage.getTitle()).contains("Tankyard");
    assertThat(stage.getWidth()).isGreaterThanOrEqualTo(900);
    assertThat(new FxRobot().lookup("#lease-name").queryLabeled().getText()).isNotBlank();
    assertThat(new FxRobot().lookup("#lease-map").query().isFocused()).isTrue();
  }
}
