package tankyard.app.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.app.example.GassyAnswer;
import tankyard.app.example.SmallAnswer;
import tankyard.app.profile.ProfilePicture.Spot;
import tankyard.app.profile.ProfilePicture.Stretch;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.units.UnitSystem;

class ProfileMakerTest {
  private final LeaseAnswer answer = SmallAnswer.answer();

  private ProfilePicture picture(String lineId, UnitSystem units) {
    return new ProfileMaker(answer.lease(), units)
        .picture(
            answer.lease().line(lineId).orElseThrow(),
            answer.cases().get(0).line(lineId).orElseThrow())
        .orElseThrow();
  }

  @Test
  void gasIsToldAtEveryPointAndOnlyWhereThereIsSome() {
    LeaseAnswer gassy = GassyAnswer.answer();
    ProfilePicture line =
        new ProfileMaker(gassy.lease(), UnitSystem.FIELD)
            .picture(
                gassy.lease().line("FL-W1").orElseThrow(),
                gassy.cases().get(0).line("FL-W1").orElseThrow())
            .orElseThrow();
    assertThat(line.gas()).hasSameSizeAs(line.spots());
    assertThat(line.gasWords(100))
        .contains("hold-up")
        .contains("% of the flow")
        .contains("between");
    assertThat(picture("L6", UnitSystem.FIELD).gasWords(100)).isEmpty();
  }

  @Test
  void headIsAsHighAsTheLiquidWouldStandInARiser() {
    Spot start = picture("L6", UnitSystem.FIELD).spots().get(0);
    // 12.4 psi of brine at SG 1.08: 12.4 / (1.08 * 0.4331 psi/ft) ft above the pipe
    assertThat(start.head() - start.pipe()).isCloseTo(12.4 / (1.08 * 0.4331), within(0.02));
  }

  @Test
  void headLiesOnThePipeWhereTheLineRunsPartFull() {
    Spot past = picture("L6", UnitSystem.FIELD).spots().get(5);
    assertThat(past.partFull()).isTrue();
    assertThat(past.head()).isEqualTo(past.pipe());
  }

  @Test
  void thePartFullStretchBeginsAtTheCrest() {
    assertThat(picture("L6", UnitSystem.FIELD).partFull()).containsExactly(new Stretch(126, 310));
  }

  @Test
  void theHeadComesDownToThePipeWhereTheStretchEnds() {
    Spot crest = new Spot(100, 130, 127, 127, 0, true);
    Spot full = new Spot(200, 116, 113, 117, 1.9, false);
    Spot next = new Spot(300, 110, 107, 116, 4.2, false);
    // Head falls 1 ft in 100 ft: 118 at the crest's side; the pipe falls from 127 to 113.
    // They meet where 127 - 0.14 x = 118 - 0.01 x, x = 9 / 0.13 ft past the crest.
    double end = 100 + 9 / 0.13;
    PartFullStretches found =
        new PartFullStretches(List.of(crest, full, next), List.of(new Stretch(100, end)));
    assertThat(found.stretches()).containsExactly(new Stretch(100, end));
    assertThat(found.spots()).hasSize(4);
    assertThat(found.spots().get(1).distance()).isEqualTo(end);
    assertThat(found.spots().get(1).pipe()).isCloseTo(127 - 0.14 * 9 / 0.13, within(1e-9));
    assertThat(found.spots().get(1).head()).isEqualTo(found.spots().get(1).pipe());
    assertThat(found.spots().get(1).partFull()).isTrue();
  }

  @Test
  void theCrestIsNamed() {
    assertThat(picture("L6", UnitSystem.FIELD).crest().orElseThrow().words())
        .isEqualTo("crest 126 ft out, pipe at 1027.0 ft");
  }

  @Test
  void theAxesHoldEverything() {
    ProfilePicture picture = picture("L6", UnitSystem.FIELD);
    for (Spot spot : picture.spots()) {
      assertThat(spot.head()).isBetween(picture.up().low(), picture.up().high());
      assertThat(spot.pipe()).isBetween(picture.up().low(), picture.up().high());
      assertThat(spot.distance()).isBetween(picture.across().low(), picture.across().high());
    }
  }

  @Test
  void readsBetweenThePoints() {
    Spot between = picture("L6", UnitSystem.FIELD).at(65);
    assertThat(between.ground()).isCloseTo(1021, within(1e-9));
    assertThat(between.pressure()).isCloseTo(6.8, within(1e-9));
  }

  @Test
  void readsTheEndPastTheEnd() {
    assertThat(picture("L6", UnitSystem.FIELD).at(999).distance()).isEqualTo(310);
  }

  @Test
  void followsTheUnits() {
    ProfilePicture metric = picture("L6", UnitSystem.METRIC);
    assertThat(metric.lengthUnit()).isEqualTo("m");
    assertThat(metric.spots().get(0).ground()).isCloseTo(1010 * 0.3048, within(1e-9));
  }
}
