package tankyard.app.profile;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tankyard.app.example.Desk;
import tankyard.app.example.SmallAnswer;
import tankyard.app.example.SmallLease;

class ProfileViewModelTest {
  private final Desk desk = new Desk();
  private final ProfileViewModel model =
      new ProfileViewModel(desk.selection, desk.view, desk.solve);

  private String shown() {
    return model.pictureProperty().get().orElseThrow().lineId();
  }

  @Test
  void beginsWithTheWaterLeg() {
    assertThat(shown()).isEqualTo("L6");
  }

  @Test
  void followsTheLinePickedOnTheMap() {
    desk.selection.select("L4");
    assertThat(shown()).isEqualTo("L4");
  }

  @Test
  void keepsTheLineWhenAWellIsPicked() {
    desk.selection.select("L4");
    desk.selection.select("W1");
    assertThat(shown()).isEqualTo("L4");
  }

  @Test
  void choosingALinePicksItOnTheMap() {
    model.choose(
        model.choices().stream().filter(c -> c.lineId().equals("L5")).findFirst().orElseThrow());
    assertThat(shown()).isEqualTo("L5");
    assertThat(desk.selection.single()).contains("L5");
  }

  @Test
  void readsOutGroundPipeAndPressure() {
    assertThat(model.readOut(40))
        .isEqualTo("At 40 ft: ground 1016.0 ft, pipe 1013.0 ft (3.0 ft deep), 9.4 psi");
    assertThat(model.readOut(200)).endsWith("part full, no pressure");
  }

  @Test
  void saysWhatToDoWhileThereIsNoLine() {
    Desk bare = new Desk(SmallLease.bare(), SmallAnswer::of);
    ProfileViewModel none = new ProfileViewModel(bare.selection, bare.view, bare.solve);
    assertThat(none.emptyWordsProperty().get()).startsWith("Draw a line");
  }
}
