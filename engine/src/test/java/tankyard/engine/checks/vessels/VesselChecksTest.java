package tankyard.engine.checks.vessels;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.CaseEdits;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.SeparatorResult;
import tankyard.engine.study.SeparatorResultBuilder;
import tankyard.engine.units.Length;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;

/** The boxes, the vessel and what is screwed to it. */
class VesselChecksTest {
  private static final Looked P1 = Looked.at("p1-osage-bend");
  private static final String SETTING = "/separators/0/regulator/setting";

  private static Looked withFloat(double gravity) {
    return P1.with(
        "/separators/0/dumpValve/floatBall",
        Map.of("diameter", "10 in", "weight", Map.of("value", gravity, "unit", "SG"), "lever", 6));
  }

  private static Looked holding(double oilMinutes, double waterMinutes) {
    return P1.seeing(c -> CaseEdits.separators(c, s -> minutes(s, oilMinutes, waterMinutes)));
  }

  private static SeparatorResult minutes(SeparatorResult s, double oil, double water) {
    return SeparatorResultBuilder.builder()
        .separatorId(s.separatorId())
        .oil(s.oil())
        .water(s.water())
        .oilVolume(s.oilVolume())
        .waterVolume(s.waterVolume())
        .oilMinutes(Optional.of(CaseEdits.computed(Time.ofMinutes(oil))))
        .waterMinutes(Optional.of(CaseEdits.computed(Time.ofMinutes(water))))
        .designWater(s.designWater())
        .build();
  }

  @Test
  void aBoxIsToldWithTheRegulatorBuiltUp() {
    Looked set = P1.with(SETTING, "9 psi");
    double box = set.caseOf("today").well("W3").orElseThrow().box().value().toPsi() + 1.5;
    Looked weak = set.with("/wells/2/boxLimit", box - 0.1, "psi");
    Finding found = weak.the("box-over-limit");

    assertThat(found.severity()).isEqualTo(Severity.FIX);
    assertThat(found.thingId()).isEqualTo("W3");
    assertThat(found.words())
        .contains(String.format("%.1f psi", box))
        .contains(String.format("trusted with %.1f psi", box - 0.1));
    assertThat(set.says("box-over-limit")).isFalse();
  }

  @Test
  void aBoxJustAtItsLimitHolds() {
    Looked set = P1.with(SETTING, "9 psi");
    double box = set.caseOf("today").well("W3").orElseThrow().box().value().toPsi() + 1.5;
    double worst =
        Math.max(box, set.caseOf("all-on").well("W3").orElseThrow().box().value().toPsi() + 1.5);

    assertThat(set.with("/wells/2/boxLimit", worst, "psi").says("box-over-limit")).isFalse();
    assertThat(set.with("/wells/2/boxLimit", worst - 0.001, "psi").says("box-over-limit")).isTrue();
  }

  @Test
  void aRecommendedSettingLeavesNoBoxOverItsLimit() {
    for (double limit : new double[] {14.5, 15, 16, 18, 25}) {
      Looked looked = P1.withEach("/wells", "boxLimit", Looked.amount(limit, "psi"));
      assertThat(looked.window().open()).isTrue();
      assertThat(looked.says("box-over-limit")).isFalse();
    }
  }

  @Test
  void shortRetentionIsToldAgainstTheGuideOfThisOil() {
    Finding found = Looked.at("p2-sandstone-knob").the("retention-short");

    assertThat(found.severity()).isEqualTo(Severity.LOOK);
    assertThat(found.words()).contains("its water for 11.2 min").contains("20 to 30 min");
  }

  @Test
  void theColdCaseAsksForMoreAndSaysSo() {
    Looked cold =
        Looked.at("p2-sandstone-knob")
            .with("/cases/0/season", "winter")
            .with("/site/groundWinter", "45 °F");

    assertThat(cold.the("retention-short").words()).contains("45 °F is colder");
  }

  @Test
  void retentionJustAtTheGuideIsLongEnough() {
    // 36 API: the guide asks for 3 to 5 minutes.
    assertThat(holding(3, 3).says("retention-short")).isFalse();
    assertThat(holding(3, 2.99).the("retention-short").words()).contains("its water for 2.99 min");
    assertThat(holding(2.99, 3).the("retention-short").words()).contains("its oil for 2.99 min");
    assertThat(P1.says("retention-short")).isFalse();
  }

  private static Looked parting(double waterMm, double oilMm) {
    return P1.seeing(
        c ->
            CaseEdits.separators(
                c,
                s ->
                    s.withWaterDrops(Optional.of(drop(waterMm)))
                        .withOilDrops(Optional.of(drop(oilMm)))));
  }

  private static Computed<Length> drop(double millimetres) {
    return CaseEdits.computed(Length.of(millimetres, Unit.MILLIMETRE));
  }

  @Test
  void dropsLargerThanAskedAreTold() {
    String id = "drops-carried-over";
    assertThat(parting(0.5, 0.2).says(id)).isFalse();
    assertThat(parting(0.501, 0.2).the(id).words())
        .contains("water drops smaller than 0.501 mm leave with the oil")
        .contains("0.5 mm");
    assertThat(parting(0.5, 0.25).the(id).words())
        .contains("oil drops smaller than 0.25 mm leave with the water")
        .contains("0.2 mm");
    assertThat(parting(0.6, 0.4).the(id).words()).contains("oil drops smaller than 0.4 mm");
    assertThat(parting(0.6, 0.1).the(id).severity()).isEqualTo(Severity.LOOK);
  }

  @Test
  void aFloatMustWeighBetweenTheLiquids() {
    Looked exact = P1.with("/fluids/oil", "0.85 SG");
    assertThat(withFloat(0.95).says("float-outside-liquids")).isFalse();
    assertThat(withFloat(1.1).the("float-outside-liquids").severity()).isEqualTo(Severity.FIX);
    assertThat(withFloat(0.8).the("float-outside-liquids").words())
        .contains("0.800")
        .contains("0.845")
        .contains("1.060");
    assertThat(withFloat(1.06).says("float-outside-liquids")).isTrue();
    assertThat(exact.says("float-outside-liquids")).isFalse();
    Map<String, Object> asOil = Map.of("diameter", "10 in", "weight", "0.85 SG", "lever", 6);
    assertThat(exact.with("/separators/0/dumpValve/floatBall", asOil).says("float-outside-liquids"))
        .isTrue();
  }

  @Test
  void aSpringIsUsedInsideItsRangeEndsIncluded() {
    Looked nine = P1.with(SETTING, "9 psi");
    String low = "/separators/0/regulator/rangeLow";
    String high = "/separators/0/regulator/rangeHigh";
    String id = "regulator-out-of-spring-range";

    assertThat(nine.says(id)).isFalse();
    assertThat(nine.with(low, "9 psi").says(id)).isFalse();
    assertThat(nine.with(high, "9 psi").says(id)).isFalse();
    assertThat(nine.with(low, "10 psi").the(id).words()).contains("9 psi is below the 10 psi");
    assertThat(nine.with(high, "8 psi").the(id).words()).contains("9 psi is above the 8 psi");
    assertThat(nine.with(high, "8 psi").the(id).severity()).isEqualTo(Severity.LOOK);
  }

  @Test
  void whatNobodyTypedIsSaidAndFewBoxesAreNamedOneByOne() {
    assertThat(P1.the("limits-not-checked").words()).contains("Nameplate, Gauge and Float pull");
    assertThat(Looked.at("p3-coyote-creek").the("limits-not-checked").words())
        .contains("the stuffing boxes of 9 wells");
  }

  @Test
  void withEveryLimitTypedNothingIsLeftUnchecked() {
    Looked all =
        withFloat(0.95)
            .with("/separators/0/dumpValve/port", "1 in")
            .with("/separators/0/nameplate", "125 psi")
            .with("/separators/0/gaugeRange", "30 psi");
    Looked noFloat =
        P1.with("/separators/0/nameplate", "125 psi").with("/separators/0/gaugeRange", "30 psi");

    assertThat(noFloat.the("limits-not-checked").words()).contains("nobody typed: Float pull.");
    assertThat(
            List.of(
                withFloat(0.95)
                    .with("/separators/0/nameplate", "125 psi")
                    .says("limits-not-checked"),
                all.says("limits-not-checked")))
        .containsExactly(true, false);
  }

  @Test
  void aVesselWithoutANameplateIsCautionedOver() {
    assertThat(P1.the("no-nameplate").words()).contains("No nameplate, no pressure");
    assertThat(P1.with("/separators/0/nameplate", "125 psi").says("no-nameplate")).isFalse();
  }
}
