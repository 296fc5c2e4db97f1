package tankyard.app.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tankyard.app.example.GassyAnswer;
import tankyard.app.example.SmallWindow;
import tankyard.app.pressure.WindowPicture.Mark;
import tankyard.app.pressure.WindowPicture.Part;
import tankyard.app.pressure.WindowPicture.Segment;
import tankyard.app.pressure.WindowPicture.State;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.window.Window;

class PictureMakerTest {
  private static final PictureMaker FIELD =
      new PictureMaker(UnitSystem.FIELD, Map.of("winter", "Today, winter"));

  private static WindowPicture picture(Window window) {
    return FIELD.picture(window);
  }

  @Test
  void aWindowThatGasBreaksIsNotValidAndSaysWhy() {
    WindowPicture picture = picture(GassyAnswer.answer().windows().get(0));
    assertThat(picture.state()).isEqualTo(State.INVALID);
    assertThat(picture.verdict())
        .startsWith("Not valid: 88 % of what comes in at 12.0 psi is gas")
        .endsWith("Take the gas off first; no setting is given.");
  }

  @Test
  void namesBothEnds() {
    WindowPicture picture = picture(SmallWindow.open());
    assertThat(picture.least().orElseThrow().digits()).isEqualTo("14.5");
    assertThat(picture.least().orElseThrow().name()).isEqualTo("crest 126 ft out on Line 6");
    assertThat(picture.least().orElseThrow().caseName()).isEqualTo("Today, winter");
    assertThat(picture.most().orElseThrow().digits()).isEqualTo("26.0");
    assertThat(picture.state()).isEqualTo(State.OPEN);
  }

  @Test
  void thePartsOfTheLeastLeadUpToIt() {
    WindowPicture picture = picture(SmallWindow.open());
    assertThat(picture.segments().stream().map(Segment::part))
        .containsExactly(Part.STATIC, Part.FRICTION, Part.VALVE, Part.MARGIN);
    for (int i = 1; i < 4; i++) {
      assertThat(picture.segments().get(i).from()).isEqualTo(picture.segments().get(i - 1).to());
    }
    assertThat(picture.segments().get(3).to())
        .isCloseTo(picture.least().orElseThrow().value(), within(1e-9));
  }

  @Test
  void showsWhatOneGetsByForgettingTheHillOnce() {
    List<Mark> alone =
        picture(SmallWindow.open()).marks().stream()
            .filter(m -> m.digits().equals("12.1"))
            .toList();
    assertThat(alone).hasSize(1);
    assertThat(alone.get(0).kind()).isEqualTo(Mark.Kind.TANK_ALONE);
  }

  @Test
  void aRunnerUpIsShownInItsWorstCaseOnly() {
    assertThat(picture(SmallWindow.open()).marks().stream().map(Mark::name))
        .doesNotContain("crest 126 ft out on Line 6")
        .contains("Well 2's stuffing box");
  }

  @Test
  void aLimitFarAwayDoesNotSquashTheScale() {
    WindowPicture picture = picture(SmallWindow.open());
    assertThat(picture.axis().high()).isEqualTo(30);
    assertThat(picture.beyond()).containsExactly("90 % of the relief valve 67.5 psi");
  }

  @Test
  void theOilLegIsMovedFromTheRegulatorToTheGauge() {
    Mark leg =
        picture(SmallWindow.open()).marks().stream()
            .filter(m -> m.kind() == Mark.Kind.OIL_LEG)
            .findFirst()
            .orElseThrow();
    assertThat(leg.value()).isCloseTo(4.2 + 0.6, within(1e-9));
  }

  @Test
  void aClosedWindowSaysHowFarItsEndsAreApart() {
    WindowPicture picture = picture(SmallWindow.closed());
    assertThat(picture.state()).isEqualTo(State.CLOSED);
    assertThat(picture.isCrossed()).isTrue();
    assertThat(picture.verdict())
        .contains("14.5 psi")
        .contains("9.3 psi")
        .contains("5.2 psi short");
  }

  @Test
  void whatIsNotKnownIsSaidAndNotDrawn() {
    WindowPicture picture = picture(SmallWindow.unknown());
    assertThat(picture.state()).isEqualTo(State.UNKNOWN);
    assertThat(picture.least()).isEmpty();
    assertThat(picture.notChecked()).hasSize(1);
  }

  @Test
  void showsTenthsBelowAHundredPsi() {
    Rounded psi = Rounded.in(UnitSystem.FIELD);
    assertThat(psi.near(17.04)).isEqualTo("17.0");
    assertThat(psi.near(25.96)).isEqualTo("26.0");
    assertThat(psi.near(241.3)).isEqualTo("241");
  }

  @Test
  void followsTheUnitSystem() {
    WindowPicture metric =
        new PictureMaker(UnitSystem.METRIC, Map.of()).picture(SmallWindow.open());
    assertThat(metric.unit()).isEqualTo("kPa");
    assertThat(metric.least().orElseThrow().value()).isCloseTo(14.5 * 6.894757, within(1e-3));
  }
}
