package tankyard.engine.checks.tanks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.CaseEdits;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.OverflowResult;
import tankyard.engine.study.OverflowResultBuilder;
import tankyard.engine.study.StorageResult;
import tankyard.engine.study.StorageResultBuilder;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;

/** Room in the tanks, the overflow and the switch. */
class TankChecksTest {
  private static final Looked P1 = Looked.at("p1-osage-bend");
  private static final Looked P3 = Looked.at("p3-coyote-creek");

  private static Looked storing(double usable, double needed, double hours) {
    return P3.seeing(c -> CaseEdits.storage(c, s -> storage(s, usable, needed, hours)));
  }

  private static StorageResult storage(
      StorageResult s, double usable, double needed, double hours) {
    return StorageResultBuilder.builder()
        .oilRate(s.oilRate())
        .waterRate(s.waterRate())
        .allFluid(s.allFluid())
        .oilUsable(Optional.of(CaseEdits.computed(Volume.ofBarrels(usable))))
        .haulInterval(s.haulInterval())
        .roadOut(s.roadOut())
        .oilNeeded(Optional.of(CaseEdits.computed(Volume.ofBarrels(needed))))
        .waterRoom(s.waterRoom())
        .waterHours(Optional.of(CaseEdits.computed(Time.ofHours(hours))))
        .build();
  }

  private static Looked overflowing(double capacity, double allFluid) {
    return P3.seeing(
        c ->
            CaseEdits.overflows(
                c,
                o ->
                    OverflowResultBuilder.builder()
                        .lineId(o.lineId())
                        .capacity(CaseEdits.computed(LiquidRate.ofBarrelsPerDay(capacity)))
                        .allFluid(LiquidRate.ofBarrelsPerDay(allFluid))
                        .build()));
  }

  @Test
  void oilStorageIsHeldAgainstALoadAndTheRoad() {
    assertThat(storing(459.9, 460, 20).the("oil-storage-short").severity()).isEqualTo(Severity.FIX);
    assertThat(storing(460, 460, 20).says("oil-storage-short")).isFalse();
    assertThat(storing(460.1, 460, 20).says("oil-storage-short")).isFalse();
  }

  @Test
  void theWorstCaseIsTheOneThatIsToldOnce() {
    Looked growth = P1.with("/cases/1/oil", 3);
    Finding found = growth.the("oil-storage-short");

    assertThat(P1.the("oil-storage-short").caseId()).contains("today");
    assertThat(found.caseId()).contains("all-on");
    // 160 and three days of 36.
    assertThat(found.words()).contains("268 bbl needed");
  }

  @Test
  void waterHoursAreHeldAgainstTheNight() {
    Finding found = storing(500, 460, 13.9).the("water-hours-short");

    assertThat(found.severity()).isEqualTo(Severity.FIX);
    assertThat(found.words()).contains("13.9 h").contains("14 h");
    assertThat(storing(500, 460, 14).says("water-hours-short")).isFalse();
    assertThat(storing(500, 460, 14.1).says("water-hours-short")).isFalse();
  }

  @Test
  void aNightNobodyTypedIsTwelveHours() {
    Looked one = Looked.at("p3-coyote-creek-210-oil");

    assertThat(one.with("/practice/nightOut", null).the("water-hours-short").words())
        .contains("11.7 h")
        .contains("12 h");
    assertThat(one.with("/practice/nightOut", "11 h").says("water-hours-short")).isFalse();
  }

  @Test
  void anOverflowMustPassAllFluid() {
    Finding found = overflowing(300, 300.4).all("overflow-too-small").get(0);

    assertThat(found.severity()).isEqualTo(Severity.FIX);
    assertThat(found.words()).contains("passes 300 bbl/d").contains("300.4 bbl/d");
    assertThat(overflowing(300, 300).says("overflow-too-small")).isFalse();
    assertThat(overflowing(300, 299).says("overflow-too-small")).isFalse();
  }

  private static final Looked WIDE =
      P3.with("/lines/13/pipe", "steel-3").with("/lines/14/pipe", "steel-3");

  private static List<String> level(Looked lease) {
    return lease.all("overflow-level").stream().map(Finding::thingId).toList();
  }

  /** All three lips stand at 14.5 ft. */
  @Test
  void anOverflowBetweenLipsAtOneHeightIsAskedForItsFall() {
    assertThat(level(WIDE)).containsExactly("OV1", "OV2");
    assertThat(WIDE.all("overflow-level").get(0).severity()).isEqualTo(Severity.LOOK);
    assertThat(level(falling(WIDE, 0))).containsExactly("OV1", "OV2");
    assertThat(level(falling(WIDE, 0.01))).containsExactly("OV2");
    assertThat(level(WIDE.with("/tanks/0/overflowHeight", "14.6 ft"))).containsExactly("OV2");
  }

  /**
   * An oil tank of 12 by 15 ft catches from its outlet at 1 ft to its lip at 14.5 ft: 13.5 ft of
   * 113.1 square feet are 271.9 bbl.
   */
  @Test
  void theTankAnOverflowLeadsToCatchesForHours() {
    Looked lease =
        P3.with("/tanks/1/diameter", "12 ft")
            .with("/tanks/1/outletHeight", "1 ft")
            .with("/tanks/1/overflowHeight", "14.5 ft");
    String into = lease.evidence().lease().tanks().get(1).id();
    String line =
        lease.evidence().lease().lines().stream()
            .filter(l -> l.id().startsWith("OV") && l.to().equals(into))
            .findFirst()
            .orElseThrow()
            .id();
    OverflowResult overflow =
        lease.evidence().cases().get(0).overflows().stream()
            .filter(o -> o.lineId().equals(line))
            .findFirst()
            .orElseThrow();
    double barrels = Math.PI * 36 * 13.5 / 5.614583;
    assertThat(overflow.catches().orElseThrow().value().toHours())
        .isCloseTo(24 * barrels / overflow.allFluid().toBarrelsPerDay(), within(0.01));
  }

  /** Two inches are too small on any slope, and that is said instead. */
  @Test
  void whereNoSlopeHelpsNoneIsAskedFor() {
    assertThat(level(P3)).isEmpty();
    assertThat(P3.says("overflow-too-small")).isTrue();
  }

  @Test
  void aFallThatCarriesAllFluidIsEnoughAndAHairLessIsNot() {
    double inches = 0;
    for (CaseResult c : WIDE.evidence().cases()) {
      inches =
          Math.max(inches, c.overflows().get(0).leastFall().orElseThrow().value().in(Unit.INCH));
    }

    assertThat(WIDE.says("overflow-too-small")).isFalse();
    assertThat(falling(WIDE, 1.0001 * inches).says("overflow-too-small")).isFalse();
    assertThat(falling(WIDE, 0.9999 * inches).the("overflow-too-small").thingId()).isEqualTo("OV1");
  }

  private static Looked falling(Looked lease, double inches) {
    return lease.with("/lines/13/fall", inches, "in");
  }

  @Test
  void anOilTankWithoutAnOverflowIsNamed() {
    // A chain that ends at an oil tank leads nowhere: the last of it spills.
    Looked ends = P3.with("/lines/14", null);

    assertThat(P3.says("overflow-missing")).isFalse();
    assertThat(ends.the("overflow-missing").thingId()).isEqualTo("OT2");
    assertThat(P3.with("/lines/14/status", "remove").the("overflow-missing").thingId())
        .isEqualTo("OT2");
  }

  @Test
  void aSwitchMustTripBelowTheLip() {
    String at = "/tanks/0/switchHeight";

    assertThat(P1.says("switch-above-lip")).isFalse();
    assertThat(P1.with(at, "14.49 ft").says("switch-above-lip")).isFalse();
    assertThat(P1.with(at, "14.5 ft").the("switch-above-lip").severity()).isEqualTo(Severity.FIX);
    assertThat(P1.with(at, "14.75 ft").the("switch-above-lip").words())
        .contains("14.75 ft")
        .contains("14.5 ft");
  }

  private static Looked switchedAt(double feet, double highest) {
    return P1.seeing(
        c ->
            c.withSwitches(
                c.switches().stream()
                    .filter(s -> s.tankId().equals("OT1"))
                    .map(
                        s ->
                            s.withHeight(Optional.of(Length.ofFeet(feet)))
                                .withHighest(CaseEdits.computed(Length.ofFeet(highest))))
                    .toList()));
  }

  @Test
  void aSwitchNeedsRoomAboveItForWhatStillComes() {
    assertThat(switchedAt(14, 14.01).says("switch-too-high")).isFalse();
    assertThat(switchedAt(14, 14).says("switch-too-high")).isFalse();
    Finding found = switchedAt(14, 13.9).the("switch-too-high");
    assertThat(found.severity()).isEqualTo(Severity.LOOK);
    // Thirteen feet ten and three quarters: a tape's inch below is 13 ft 10 in.
    assertThat(found.words()).contains("14 ft").contains("13.9 ft").contains("30 min");
    assertThat(found.wayOut().get(0)).contains("13.83 ft");
  }

  @Test
  void howFastTheWellsStopDecidesWhereASwitchMaySit() {
    Looked slow = P1.with("/practice/reaction", "3 h");
    assertThat(P1.says("switch-too-high")).isFalse();
    assertThat(slow.the("switch-too-high").severity()).isEqualTo(Severity.FIX);
    assertThat(slow.the("switch-too-high").thingId()).isEqualTo("OT1");
  }

  @Test
  void aTankWithoutASwitchIsNamed() {
    assertThat(P1.the("high-switch-missing").thingId()).isEqualTo("WT1");
    assertThat(P1.with("/tanks/1/switchHeight", "14 ft").says("high-switch-missing")).isFalse();
    assertThat(P1.with("/tanks/0/switchHeight", null).all("high-switch-missing")).hasSize(2);
  }

  @Test
  void aLoadMustComeOutOfOneTank() {
    double holds = P1.caseOf("today").storage().oilUsable().orElseThrow().value().toBarrels();
    String load = "/tanks/0/load";

    assertThat(P1.says("load-over-tank")).isFalse();
    assertThat(P1.with(load, holds, "bbl").says("load-over-tank")).isFalse();
    assertThat(P1.with(load, "190 bbl").the("load-over-tank").severity()).isEqualTo(Severity.LOOK);
    assertThat(P1.with(load, "190 bbl").the("load-over-tank").words())
        .contains("181.9 bbl")
        .contains("190 bbl");
  }
}
