package tankyard.engine.checks.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.PoleLoad;

/**
 * The fifth public case with a pole that gives one phase of 240 V. Its 5-hp motor draws the 28 A of
 * motor tables (from memory) over 800 ft of #4 aluminium: by hand 2 x 21.2 x 28 x 800/41,740 =
 * 22.75 V, 9.5 % of 240 V.
 */
class PowerChecksTest {
  private static final String PUMP = "/injectionPumps/0/";
  private static final Looked LEASE =
      Looked.at("p5-prairie-flood")
          .plus(
              "/powerPoles",
              Map.of(
                  "id", "PP1",
                  "name", "Pole",
                  "at", Map.of("east", "72 ft", "north", "760 ft"),
                  "status", "new",
                  "volts", "240 V",
                  "phases", "one"))
          .with(PUMP + "motorAmps", "28 A")
          .with(PUMP + "wire", Map.of("gauge", "awg-4", "metal", "aluminium"));

  private static PoleLoad load(Looked lease) {
    return lease.evidence().yard().power().get(0);
  }

  @Test
  void aLongThinWireIsFoundWithTheGaugeThatWouldDo() {
    Finding found = LEASE.the("voltage-drop-large");

    assertThat(found.severity()).isEqualTo(Severity.FIX);
    assertThat(found.words()).contains("800 ft of #4 aluminium").contains("9.5 %").contains("5 %");
    // 5 % would need 41,740 x 9.5/5 = 79,300 circular mils; #1 has 83,690.
    assertThat(found.wayOut().get(0)).isEqualTo("#1 aluminium would do.");
  }

  /** The length at which just 5 % are lost: 0.05 x 240 x 41,740/(2 x 21.2 x 28) = 421.9 ft. */
  @Test
  void fivePercentAreEnough() {
    assertThat(at("421.7 ft").says("voltage-drop-large")).isFalse();
    assertThat(at("422.1 ft").says("voltage-drop-large")).isTrue();
  }

  private static Looked at(String length) {
    return LEASE.with(
        PUMP + "wire", Map.of("gauge", "awg-4", "metal", "aluminium", "length", length));
  }

  @Test
  void whatNobodyTypedIsNotJudged() {
    assertThat(LEASE.with(PUMP + "wire", null).says("voltage-drop-large")).isFalse();
    assertThat(LEASE.with(PUMP + "motor", null).says("voltage-drop-large")).isFalse();
    assertThat(Looked.at("p5-prairie-flood").says("voltage-drop-large")).isFalse();
  }

  @Test
  void motorsWithoutAWireAreNamed() {
    Finding found = LEASE.with(PUMP + "wire", null).the("wire-unknown");
    assertThat(found.severity()).isEqualTo(Severity.NOTE);
    assertThat(found.words()).contains("Pole", "Injection pump", "nobody typed the wire");
    assertThat(LEASE.says("wire-unknown")).isFalse();
    assertThat(Looked.at("p5-prairie-flood").says("wire-unknown")).isFalse();
  }

  /** Tables of motor amps, 230 V (from memory): 5 hp on one phase 28 A, on three 15.2 A. */
  @Test
  void withoutANameplateTheTableIsTaken() {
    Looked bySize = LEASE.with(PUMP + "motorAmps", null);

    assertThat(load(bySize).running().value().amps()).isCloseTo(28 * 230 / 240.0, within(1e-9));
    assertThat(load(bySize.with("/powerPoles/0/phases", "three")).running().value().amps())
        .isCloseTo(15.2 * 230 / 240, within(1e-9));
  }

  /** Two motors of 28 A: 6 x 56 = 336 A at once, 28 + 168 = 196 A one after the other. */
  @Test
  void motorsThatStartTogetherAreAddedUp() {
    Looked two = LEASE.with("/wells/0/motor", "5 hp").with("/wells/0/motorAmps", "28 A");
    Finding found = two.the("motors-start-together");

    assertThat(found.severity()).isEqualTo(Severity.LOOK);
    assertThat(found.words()).contains("2 motors").contains("336 A").contains("196 A");
    assertThat(load(two).running().value().amps()).isCloseTo(56, within(1e-9));
    assertThat(LEASE.says("motors-start-together")).isFalse();
  }

  @Test
  void aMotorBelongsToTheNearestPoleThatStays() {
    Map<String, Object> nearer =
        Map.of(
            "id", "PP2",
            "name", "Near",
            "at", Map.of("east", "72 ft", "north", "-140 ft"),
            "status", "new",
            "volts", "480 V",
            "phases", "three");
    Looked both = LEASE.plus("/powerPoles", nearer);

    assertThat(load(both).poleId()).isEqualTo("PP2");
    assertThat(load(both.with("/powerPoles/1/status", "remove")).poleId()).isEqualTo("PP1");
  }

  @Test
  void newMotorsBringTheCaution() {
    assertThat(LEASE.says("electricity")).isTrue();
    assertThat(
            LEASE
                .with("/powerPoles/0/status", "have")
                .with(PUMP + "status", "have")
                .says("electricity"))
        .isFalse();
  }
}
