package tankyard.app.pressure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.app.example.Desk;
import tankyard.app.example.SmallLease;
import tankyard.engine.units.UnitSystem;

class PressureViewModelTest {
  private static PressureViewModel model(Desk desk) {
    return new PressureViewModel(desk.selection, desk.view, desk.solve, desk.shown::add);
  }

  @Test
  void hasOnePictureForEachSeparator() {
    PressureViewModel model = model(new Desk());
    assertThat(model.picturesProperty().get()).hasSize(1);
    assertThat(model.emptyWordsProperty().get()).isEmpty();
  }

  @Test
  void listsEveryLimitOfEveryCaseTheGoverningFirst() {
    PressureViewModel model = model(new Desk());
    assertThat(model.limits()).hasSize(7);
    assertThat(model.limits().get(0).gaugeDigits()).isEqualTo("14.5");
    assertThat(
            model.limits().stream()
                .filter(l -> l.end().equals("at most"))
                .findFirst()
                .orElseThrow()
                .name())
        .isEqualTo("Well 3's stuffing box");
  }

  @Test
  void saysWhatToDoWhileThereIsNoSeparator() {
    Desk desk = new Desk(SmallLease.bare(), l -> PressurePictures.with(l, List.of()));
    assertThat(model(desk).emptyWordsProperty().get()).contains("Place a separator");
  }

  @Test
  void followsTheUnits() {
    Desk desk = new Desk();
    PressureViewModel model = model(desk);
    desk.view.unitsProperty().set(UnitSystem.METRIC);
    assertThat(model.picturesProperty().get().get(0).unit()).isEqualTo("kPa");
  }

  @Test
  void picksTheThingOnTheMap() {
    Desk desk = new Desk();
    model(desk).select("W3");
    assertThat(desk.selection.single()).contains("W3");
  }

  @Test
  void givesTheWorkingOfANumber() {
    Desk desk = new Desk();
    PressureViewModel model = model(desk);
    model.show(model.limits().get(0).working());
    assertThat(desk.shown.get(0).value()).isEqualTo(14.5);
  }
}
