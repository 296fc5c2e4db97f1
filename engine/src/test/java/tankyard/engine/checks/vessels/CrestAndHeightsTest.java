package tankyard.engine.checks.vessels;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Rounding;

/** A hill on the way, and heights nobody is sure of. */
class CrestAndHeightsTest {
  private static final Looked P1 = Looked.at("p1-osage-bend");
  private static final Looked P2 = Looked.at("p2-sandstone-knob-2in");
  private static final String ACCURACY = "/site/heightAccuracy";

  @Test
  void theCrestIsNamedWithTheTanksNaiveAnswerBesideIt() {
    Finding found = P2.the("crest-governs");

    assertThat(found.severity()).isEqualTo(Severity.LOOK);
    assertThat(found.thingId()).isEqualTo("WL1");
    assertThat(found.words())
        .contains("tank alone would need 3.6 psi")
        .contains("crest 1,000 ft out on Water leg needs 16.8 psi")
        .contains("no siphon");
    assertThat(found.wayOut()).anyMatch(w -> w.contains("air vent at the crest"));
  }

  @Test
  void theNextSizeOfLegIsWorkedOutAsIfItWereLaid() {
    double laid =
        Looked.at("p2-sandstone-knob").window().least().orElseThrow().gauge().value().toPsi();

    assertThat(P2.the("crest-governs").wayOut())
        .anyMatch(
            w ->
                w.startsWith("3-in poly SDR 11 in place of 2-in poly SDR 11 for Water leg: least ")
                    && w.contains(String.format("least %.1f psi", Rounding.UP.round(laid, 1))));
  }

  @Test
  void aTankThatWouldPullByItselfIsSaidToNeedNothing() {
    assertThat(Looked.at("p2-sandstone-knob").the("crest-governs").words())
        .contains("would need nothing (-0.5 psi)");
  }

  @Test
  void withoutAHillTheTankGoverns() {
    assertThat(P1.says("crest-governs")).isFalse();
  }

  @Test
  void theCrestGovernsUpToTheTankThatNeedsAsMuch() {
    double perFoot = P2.evidence().lease().fluids().brine().specific() * 0.4331;
    double equal = 15.3;
    for (int i = 0; i < 3; i++) { // a higher riser loses a little more, so go there in steps
      Looked moved = P2.with("/tanks/1/inletHeight", equal, "ft");
      double crest = psi(P2.window().least().orElseThrow().gauge().value());
      double alone = psi(moved.window().tankAlone().orElseThrow().gauge().value());
      equal += (crest - alone) / perFoot;
    }

    assertThat(P2.with("/tanks/1/inletHeight", equal - 0.01, "ft").says("crest-governs")).isTrue();
    assertThat(P2.with("/tanks/1/inletHeight", equal + 0.01, "ft").says("crest-governs")).isFalse();
  }

  private static double psi(Pressure pressure) {
    return pressure.toPsi();
  }

  @Test
  void heightsFromACheapReceiverDecideAndTheMeasurementIsNamed() {
    Finding found = P1.with(ACCURACY, "10 ft").the("heights-decide");

    assertThat(found.severity()).isEqualTo(Severity.LOOK);
    // 10 ft of 1.06 brine; the setting of 9 psi stands 1.5 psi above the least of 7.5.
    assertThat(found.words()).contains("1.5 psi off the least").contains("by 4.6 psi");
    assertThat(found.wayOut().get(0))
        .contains("between Separator and Water tank's inlet")
        .contains("0.46 psi for every foot");
  }

  @Test
  void levelledHeightsOrNoneStatedDecideNothing() {
    assertThat(P1.says("heights-decide")).isFalse();
    assertThat(P1.with(ACCURACY, "0.1 ft").says("heights-decide")).isFalse();
    assertThat(P1.with(ACCURACY, "0 ft").says("heights-decide")).isFalse();
  }

  @Test
  void slackAsLargeAsTheBandIsEnough() {
    Looked one = P1.with(ACCURACY, "1 ft");
    double band = one.window().least().orElseThrow().heightBand().orElseThrow().toPsi();
    double slack =
        psi(one.window().setting().orElseThrow().gauge())
            - psi(one.window().least().orElseThrow().gauge().value());
    double exact = slack / band;

    assertThat(P1.with(ACCURACY, exact * (1 - 1e-9), "ft").says("heights-decide")).isFalse();
    assertThat(P1.with(ACCURACY, exact * (1 + 1e-9), "ft").says("heights-decide")).isTrue();
  }

  @Test
  void heightsMayOpenAWindowThatIsClosed() {
    Looked closed = P1.withEach("/wells", "boxLimit", "12 psi").with(ACCURACY, "10 ft");

    assertThat(closed.the("heights-decide").words()).contains("1.9 psi short");
  }

  @Test
  void aSettingFarBelowTheLeastIsNotForTheHeightsToDecide() {
    Looked low = P1.with(ACCURACY, "1 ft").with("/separators/0/regulator/setting", "3 psi");

    assertThat(low.says("setting-below-least")).isTrue();
    assertThat(low.says("heights-decide")).isFalse();
  }
}
