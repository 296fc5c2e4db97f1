package tankyard.engine.checks.injection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.engine.checks.CaseEdits;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.SuctionResult;
import tankyard.engine.units.Length;

/** Prairie Flood's pump: about 30 ft are left at its suction. */
class SuctionCheckTest {
  private static final Looked BASE =
      Looked.at("p5-prairie-flood").with("/injectionPumps/0/suctionNeeded", 10, "ft");

  private static CaseResult leaving(CaseResult c, double feet) {
    return c.withSuctions(
        c.suctions().stream()
            .map(s -> s.withAvailable(CaseEdits.computed(Length.ofFeet(feet))))
            .toList());
  }

  private static SuctionResult suction(Looked looked) {
    return looked.caseOf("today").suctions().get(0);
  }

  @Test
  void threeFeetAboveTheMakersNeedAreEnoughAndLessIsNot() {
    assertThat(BASE.says("suction-short")).isFalse();
    assertThat(BASE.seeing(c -> leaving(c, 13)).says("suction-short")).isFalse();
    Finding found = BASE.seeing(c -> leaving(c, 12.99)).the("suction-short");
    assertThat(found.words()).contains("12.99 ft").contains("13 ft").contains("Water tank");
  }

  /** With the tank drawn down to it, just the maker's need and the spare are left. */
  @Test
  void theLowestLevelIsTheOneAtWhichJustEnoughIsLeft() {
    SuctionResult base = suction(BASE);
    double room = base.available().value().toFeet() - 10 - 3;

    assertThat(base.lowest().orElseThrow().value().toFeet())
        .isCloseTo(base.level().toFeet() - room, within(1e-9));
    assertThat(suction(Looked.at("p5-prairie-flood")).lowest()).isEmpty();
  }

  @Test
  void aNeedNobodyTypedIsNotChecked() {
    Looked none = Looked.at("p5-prairie-flood").seeing(c -> leaving(c, 1));
    assertThat(none.says("suction-short")).isFalse();
  }

  @Test
  void aLongerSuctionLineCostsItsFrictionAndItsAcceleration() {
    SuctionResult base = suction(BASE);
    SuctionResult longer = suction(BASE.with("/lines/20/length", 60, "ft"));
    assertThat(longer.acceleration().value().toFeet())
        .isCloseTo(5 * base.acceleration().value().toFeet(), within(0.05));
    double lost = base.available().value().toFeet() - longer.available().value().toFeet();
    assertThat(lost)
        .isCloseTo(
            longer.acceleration().value().toFeet()
                - base.acceleration().value().toFeet()
                + longer.friction().toFeet()
                - base.friction().toFeet(),
            within(1e-6));
  }

  @Test
  void fivePlungersDrawSmootherThanThreeAndOneRougher() {
    double three = suction(BASE).acceleration().value().toFeet();
    double five =
        suction(BASE.with("/injectionPumps/0/plungers", "quintuplex"))
            .acceleration()
            .value()
            .toFeet();
    double one =
        suction(BASE.with("/injectionPumps/0/plungers", "simplex")).acceleration().value().toFeet();
    assertThat(five / three).isCloseTo(0.04 / 0.066, within(1e-9));
    assertThat(one / three).isCloseTo(0.4 / 0.066, within(1e-9));
  }

  @Test
  void withoutSpeedOrAltitudeTheDefaultsAreAssumedAndListed() {
    Looked bare =
        BASE.with("/injectionPumps/0/speed", null)
            .with("/injectionPumps/0/plungers", null)
            .with("/site/altitude", null);
    assertThat(suction(bare).acceleration().value().toFeet())
        .isCloseTo(suction(BASE).acceleration().value().toFeet(), within(1e-9));
    assertThat(suction(bare).available().value().toFeet())
        .isCloseTo(suction(BASE).available().value().toFeet(), within(1e-6));
    assertThat(bare.evidence().assumptions())
        .filteredOn(a -> a.thingId().equals("IP1"))
        .extracting(a -> a.words())
        .anySatisfy(w -> assertThat(w).contains("300 rpm"))
        .anySatisfy(w -> assertThat(w).contains("triplex"))
        .anySatisfy(w -> assertThat(w).contains("1000 ft"));
  }
}
