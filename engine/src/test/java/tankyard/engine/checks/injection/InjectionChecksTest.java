package tankyard.engine.checks.injection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.InjectionResult;
import tankyard.engine.takeoff.SmallBattery;

/** The first public case with a pump and an injection well of the fifth: 120 psi and 0.25 psi. */
class InjectionChecksTest {
  private static final String PUMP = "/injectionPumps/0/";
  private static final String WELL = "/injectionWells/0/";
  private static final Looked LEASE =
      Looked.at("p1-osage-bend")
          .plus(
              "/injectionPumps",
              Map.of(
                  "id", "IP1",
                  "name", "Pump",
                  "at", Map.of("east", "780 ft", "north", "630 ft"),
                  "ground", "845 ft",
                  "status", "new",
                  "rate", "600 bbl/d",
                  "suctionHeight", "1 ft",
                  "dischargeHeight", "1 ft"))
          .plus(
              "/injectionWells",
              Map.of(
                  "id", "IW1",
                  "name", "Injection well",
                  "at", Map.of("east", "1500 ft", "north", "630 ft"),
                  "ground", "845 ft",
                  "status", "have",
                  "wellheadHeight", "2 ft",
                  "pressureAtNoFlow", "120 psi",
                  "resistance", "0.25 psi/(bbl/d)"))
          .plus(
              "/lines",
              Map.of(
                  "id", "IL1",
                  "name", "Injection line",
                  "service", "injection",
                  "from", "IP1",
                  "to", "IW1",
                  "pipe", "poly-2",
                  "status", "new"));

  private static InjectionResult today() {
    return LEASE.caseOf("today").injections().get(0);
  }

  @Test
  void theWellheadWhileRunningIsHeldAgainstThePermit() {
    double wellhead = today().wellhead().value().toPsi();
    Finding found = LEASE.with(WELL + "permitPressure", "250 psi").the("injection-over-permit");

    assertThat(found.severity()).isEqualTo(Severity.STOP);
    assertThat(found.words()).contains("270 psi").contains("250 psi");
    // (250 - 120) / 0.25
    assertThat(found.wayOut().get(0)).contains("520 bbl/d");
    assertThat(LEASE.says("injection-over-permit")).isFalse();
    assertThat(LEASE.with(WELL + "permitPressure", "315 psi").says("injection-over-permit"))
        .isFalse();
    assertThat(LEASE.with(WELL + "permitPressure", wellhead, "psi").says("injection-over-permit"))
        .isFalse();
  }

  @Test
  void aWellThatHoldsMoreThanItsPermitStandingStillIsNotToldToSlowDown() {
    assertThat(
            LEASE
                .with(WELL + "permitPressure", "100 psi")
                .the("injection-over-permit")
                .wayOut()
                .get(0))
        .contains("nothing going in");
  }

  @Test
  void theDaysWaterIsHeldAgainstThePermittedRate() {
    // Four wells of 27 bbl/d.
    assertThat(LEASE.with(WELL + "permitRate", "108 bbl/d").says("injection-rate-over-permit"))
        .isFalse();
    Finding found =
        LEASE.with(WELL + "permitRate", "107.5 bbl/d").the("injection-rate-over-permit");
    assertThat(found.severity()).isEqualTo(Severity.STOP);
    assertThat(found.words()).contains("108 bbl/d").contains("107.5 bbl/d");
    assertThat(LEASE.says("injection-rate-over-permit")).isFalse();
  }

  @Test
  void growthOfTheWaterNamesItsCase() {
    Looked growth = LEASE.with("/cases/1/water", 2).with(WELL + "permitRate", "150 bbl/d");

    assertThat(growth.the("injection-rate-over-permit").caseId()).contains("all-on");
    assertThat(growth.the("injection-rate-over-permit").words()).contains("216 bbl/d");
  }

  @Test
  void longHoursAreLookedAtAndMoreThanADayStops() {
    // 108 bbl/d at 129.6 take 20 h, at 108 take 24 h.
    assertThat(LEASE.says("injection-hours-long")).isFalse();
    assertThat(LEASE.with(PUMP + "rate", "129.6 bbl/d").says("injection-hours-long")).isFalse();
    assertThat(LEASE.with(PUMP + "rate", "129 bbl/d").the("injection-hours-long").severity())
        .isEqualTo(Severity.LOOK);
    assertThat(LEASE.with(PUMP + "rate", "108 bbl/d").the("injection-hours-long").severity())
        .isEqualTo(Severity.LOOK);
    Finding never = LEASE.with(PUMP + "rate", "107 bbl/d").the("injection-hours-long");
    assertThat(never.severity()).isEqualTo(Severity.STOP);
    assertThat(never.words()).contains("24.2 h").contains("can't keep up");
    assertThat(never.wayOut().get(0)).contains("130 bbl/d");
  }

  @Test
  void aMotorMustGiveWhatTheShaftAsks() {
    double watts = today().power().value().watts();

    assertThat(LEASE.says("motor-too-small")).isFalse();
    assertThat(LEASE.with(PUMP + "motor", "5 hp").says("motor-too-small")).isFalse();
    assertThat(LEASE.with(PUMP + "motor", watts, "W").says("motor-too-small")).isFalse();
    Finding found = LEASE.with(PUMP + "motor", "3 hp").the("motor-too-small");
    assertThat(found.severity()).isEqualTo(Severity.FIX);
    assertThat(found.words()).contains("3.3 hp").contains("3 hp");
  }

  @Test
  void aPumpWithoutAReliefValveIsToBeMended() {
    assertThat(LEASE.the("pump-relief-missing").severity()).isEqualTo(Severity.FIX);
    assertThat(LEASE.with(PUMP + "relief", "400 psi").says("pump-relief-missing")).isFalse();
    assertThat(LEASE.with(PUMP + "status", "remove").says("pump-relief-missing")).isFalse();
  }

  @Test
  void anInjectionLineWithoutACheckValveIsNoted() {
    String fittings = "/lines/" + (LEASE.evidence().lease().lines().size() - 1) + "/fittings";
    Looked stocked =
        LEASE
            .with(fittings, List.of(Map.of("fitting", "check-2", "count", 1)))
            .stocked(SmallBattery.catalog());

    assertThat(LEASE.the("injection-check-valve").thingId()).isEqualTo("IL1");
    assertThat(LEASE.stocked(SmallBattery.catalog()).says("injection-check-valve")).isTrue();
    assertThat(stocked.says("injection-check-valve")).isFalse();
  }
}
