package tankyard.engine.checks.gunbarrel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.CaseEdits;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Service;
import tankyard.engine.study.GunBarrelFall;
import tankyard.engine.study.GunBarrelResult;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;

/** Every rule about gun barrels: where it hits, where it misses, and exactly on its limit. */
class GunBarrelChecksTest {
  private static final Looked P4 = Looked.at("p4-old-windmill");
  private static final String BARREL = "/gunBarrels/0/";
  private static final String LEG = BARREL + "legPipe";

  private static Looked leg(UnaryOperator<GunBarrelResult.AtSurge> change) {
    return P4.seeing(c -> CaseEdits.gunBarrels(c, g -> g.withLeg(g.leg().map(change))));
  }

  private static Looked falls(Service service, double spareFeet) {
    UnaryOperator<GunBarrelFall> spare =
        f -> f.service() == service ? f.withSpare(CaseEdits.computed(Length.ofFeet(spareFeet))) : f;
    return P4.seeing(
        c -> CaseEdits.gunBarrels(c, g -> g.withFalls(g.falls().stream().map(spare).toList())));
  }

  @Test
  void aTankAsHighAsTheWeirIsSaidWithWhatIsMissing() {
    Finding found = P4.with("/tanks/2/ground", 902, "ft").the("gun-barrel-tank-high");

    assertThat(found.severity()).isEqualTo(Severity.STOP);
    assertThat(found.thingId()).isEqualTo("WL1");
    assertThat(found.words())
        .contains("Water tank's inlet")
        .contains("weir stands at 16.41 ft")
        .contains("can't run at all");
    assertThat(found.wayOut().get(0)).startsWith("Lower the water tank, or raise Gun barrel");
    assertThat(P4.says("gun-barrel-tank-high")).isFalse();
  }

  @Test
  void whereOnlyTheLossIsTooMuchABiggerLineIsTheWayOut() {
    Looked thin = P4.with("/lines/6/pipe", "steel-2");
    Finding found = thin.with(LEG, "steel-3").the("gun-barrel-tank-high");

    assertThat(found.words()).contains("oil goes over the top").doesNotContain("at all");
    assertThat(found.wayOut().get(0)).contains("3-in steel").contains("all the way to the tank");
  }

  @Test
  void waterThatJustReachesTheWeirRuns() {
    assertThat(falls(Service.WATER_LEG, 0).says("gun-barrel-tank-high")).isFalse();
    assertThat(falls(Service.WATER_LEG, -0.001).says("gun-barrel-tank-high")).isTrue();
  }

  @Test
  void anOilTankAboveTheOilOutletIsSaid() {
    Finding found = P4.with("/tanks/0/ground", 903, "ft").the("gun-barrel-oil-tank-high");

    assertThat(found.severity()).isEqualTo(Severity.STOP);
    assertThat(found.thingId()).isEqualTo("OL1");
    assertThat(found.words()).contains("outlet is at 18 ft").contains("Oil tank 1's inlet");
    assertThat(falls(Service.OIL_LEG, 0).says("gun-barrel-oil-tank-high")).isFalse();
    assertThat(falls(Service.OIL_LEG, -0.001).says("gun-barrel-oil-tank-high")).isTrue();
    assertThat(P4.says("gun-barrel-oil-tank-high")).isFalse();
  }

  @Test
  void aWeirCutTooLowOrTooHighPutsTheInterfaceOutOfTheVessel() {
    Finding low = P4.with(BARREL + "weirHeight", 13, "ft").the("gun-barrel-weir-off");
    Finding high = P4.with(BARREL + "weirHeight", 18.5, "ft").the("gun-barrel-weir-off");

    assertThat(low.severity()).isEqualTo(Severity.STOP);
    assertThat(low.words()).contains("stands at 13 ft").contains("oil runs out through it");
    assertThat(low.wayOut()).containsExactly("Cut the weir at 16 ft 4 3/4 in.");
    assertThat(high.words()).contains("water goes over with the oil");
    assertThat(P4.says("gun-barrel-weir-off")).isFalse();
  }

  @Test
  void aWeirAtTheOilOutletHoldsTheInterfaceThere() {
    assertThat(P4.with(BARREL + "weirHeight", 18, "ft").says("gun-barrel-weir-off")).isFalse();
    assertThat(P4.with(BARREL + "weirHeight", 18.01, "ft").says("gun-barrel-weir-off")).isTrue();
  }

  @Test
  void aLegThatPassesLessThanTheSurgeSendsTheRestWithTheOil() {
    Looked thin = P4.with(LEG, "steel-2");
    GunBarrelResult.AtSurge leg = thin.caseOf("all-on").gunBarrels().get(0).leg().orElseThrow();
    Finding found = thin.with("/wells/0/water", 400, "bbl/d").the("gun-barrel-floods");

    assertThat(leg.most().value().toBarrelsPerDay()).isGreaterThan(1500);
    assertThat(found.severity()).isEqualTo(Severity.STOP);
    assertThat(found.words()).contains("leave with the oil, into the oil tank");
    assertThat(found.wayOut().get(0)).isEqualTo("A leg of 3-in steel schedule 40.");
    assertThat(P4.says("gun-barrel-floods")).isFalse();
  }

  @Test
  void whatTheOilLegCantTakeGoesOverTheTop() {
    Finding found =
        P4.with(LEG, "steel-2")
            .with("/wells/0/water", 400, "bbl/d")
            .with("/tanks/0/ground", 902.4, "ft")
            .with("/lines/4/fittingLength", 3000, "ft")
            .the("gun-barrel-floods");

    assertThat(found.words()).contains("more than the oil leg takes: oil goes over the top");
  }

  @Test
  void aLegThatPassesJustTheSurgeFloodsNothing() {
    assertThat(leg(l -> l.withOver(LiquidRate.ofBarrelsPerDay(0))).says("gun-barrel-floods"))
        .isFalse();
    assertThat(leg(l -> l.withOver(LiquidRate.ofBarrelsPerDay(1))).says("gun-barrel-floods"))
        .isTrue();
  }

  @Test
  void aSmallLegIsToldWithWhatItDoesToTheInterfaceAndTheNextSize() {
    Finding found = P4.with(LEG, "steel-2").the("gun-barrel-leg-small");

    assertThat(found.severity()).isEqualTo(Severity.FIX);
    assertThat(found.thingId()).isEqualTo("GB1");
    assertThat(found.words()).contains("more than 3 in").contains("lifts the interface from");
    assertThat(found.wayOut().get(0)).contains("3-in steel").contains("interface at");
    assertThat(P4.says("gun-barrel-leg-small")).isFalse();
  }

  @Test
  void threeInchesOfLossPassAndAHairMoreDoesNot() {
    assertThat(
            leg(l -> l.withLoss(CaseEdits.computed(Length.ofInches(3))))
                .says("gun-barrel-leg-small"))
        .isFalse();
    assertThat(
            leg(l -> l.withLoss(CaseEdits.computed(Length.ofInches(3.001))))
                .says("gun-barrel-leg-small"))
        .isTrue();
  }

  @Test
  void aDowncomerShortOfTheSurgeIsToldWithTheSizeThatWouldDo() {
    Finding found = P4.the("gun-barrel-downcomer-small");

    assertThat(found.severity()).isEqualTo(Severity.FIX);
    assertThat(found.words()).contains("1386 bbl/d").contains("1500 bbl/d");
    assertThat(found.wayOut().get(0)).contains("6-in steel").contains("3859 bbl/d");
    assertThat(found.wayOut().get(1)).contains("Hold the surge to 1385 bbl/d");
    assertThat(P4.with(BARREL + "downcomerPipe", "steel-6").says("gun-barrel-downcomer-small"))
        .isFalse();
  }

  @Test
  void aDowncomerThatSwallowsJustTheSurgeDoes() {
    double surge = P4.caseOf("all-on").gunBarrels().get(0).surge().value().toBarrelsPerDay();

    assertThat(swallowing(surge).says("gun-barrel-downcomer-small")).isFalse();
    assertThat(swallowing(surge - 0.01).says("gun-barrel-downcomer-small")).isTrue();
  }

  private static Looked swallowing(double barrelsPerDay) {
    return leg(l -> l.withDowncomer(CaseEdits.computed(LiquidRate.ofBarrelsPerDay(barrelsPerDay))));
  }

  @Test
  void aVentThatIsTypedAsNoneIsToBeMended() {
    assertThat(P4.with(BARREL + "vent", "none").the("gun-barrel-no-vent").severity())
        .isEqualTo(Severity.FIX);
    assertThat(P4.says("gun-barrel-no-vent")).isFalse();
    assertThat(P4.with(BARREL + "vent", null).says("gun-barrel-no-vent")).isFalse();
    assertThat(P4.with(BARREL + "vent", null).evidence().assumptions())
        .anySatisfy(a -> assertThat(a.words()).isEqualTo("leg vented at its top"));
  }

  @Test
  void anInterfaceThatMovesFeetAsksForANipple() {
    Finding found = P4.the("gun-barrel-touchy");

    assertThat(found.severity()).isEqualTo(Severity.LOOK);
    assertThat(found.words())
        .contains("An inch of weir moves Gun barrel's interface 5 in")
        .contains("water of 1.03 SG")
        .contains("8.05 ft")
        .contains("has no nipple");
    assertThat(found.wayOut())
        .containsExactly("An adjustable nipple that reaches 6 in up and down.");
    assertThat(P4.with(BARREL + "nipple", 6, "in").says("gun-barrel-touchy")).isFalse();
    assertThat(P4.with(BARREL + "nipple", 3, "in").the("gun-barrel-touchy").words())
        .contains("the nipple reaches 3 in");
  }

  @Test
  void aNippleThatReachesJustFarEnoughDoes() {
    double needed = P4.caseOf("today").gunBarrels().get(0).cut().nippleNeeded().value().toFeet();

    assertThat(P4.with(BARREL + "nipple", needed, "ft").says("gun-barrel-touchy")).isFalse();
    assertThat(P4.with(BARREL + "nipple", needed - 1e-4, "ft").says("gun-barrel-touchy")).isTrue();
  }

  @Test
  void oilThatDoesNotFloatIsSaidAndNothingElseIsMadeUp() {
    Looked heavy = P4.with("/fluids/oil", 1.09, "SG");

    assertThat(heavy.the("no-oil-afloat").severity()).isEqualTo(Severity.FIX);
    assertThat(heavy.caseOf("today").gunBarrels()).isEmpty();
    assertThat(heavy.caseOf("today").wells()).hasSize(4);
    assertThat(P4.with("/fluids/oil", 1.08, "SG").says("no-oil-afloat")).isTrue();
    assertThat(P4.with("/fluids/oil", 1.07, "SG").says("no-oil-afloat")).isFalse();
  }

  @Test
  void aLegOfAnUnknownPipeIsSaidAndTheRestIsWorkedOut() {
    Looked unknown = P4.with(LEG, "bamboo");

    assertThat(unknown.the("pipe-unknown").thingId()).isEqualTo("GB1");
    GunBarrelResult barrel = unknown.caseOf("today").gunBarrels().get(0);
    assertThat(barrel.leg()).isEmpty();
    assertThat(barrel.cut().weir().value().toFeet()).isCloseTo(16.41, within(0.005));
  }

  @Test
  void aGunBarrelWithNoLinesLacksItsLegs() {
    Looked bare = P4.with("/lines/6", null).with("/lines/5", null).with("/lines/4", null);

    assertThat(bare.the("no-water-leg").words()).contains("whether it runs");
    assertThat(bare.the("no-oil-leg").thingId()).isEqualTo("GB1");
    assertThat(bare.caseOf("today").gunBarrels().get(0).falls()).isEmpty();
  }

  @Test
  void aBoxOverItsLimitUnderAGunBarrelSpeaksOfItsWeight() {
    Finding found = P4.with("/wells/0/boxLimit", 10, "psi").the("box-over-limit");

    assertThat(found.words()).contains("under the gun barrel's weight").doesNotContain("regulator");
    assertThat(found.wayOut().get(0)).contains("Nothing can lower");
  }

  @Test
  void boxesWhoseLimitsNobodyTypedAreNotChecked() {
    assertThat(P4.the("limits-not-checked").words()).contains("Well 1, Well 2, Well 3 and Well 4");
    assertThat(P4.withEach("/wells", "boxLimit", "30 psi").says("limits-not-checked")).isFalse();
  }

  @Test
  void theLinesOffAGunBarrelRunPartFullByDesign() {
    assertThat(P4.caseOf("today").line("OL1").orElseThrow().points()).anyMatch(p -> p.partFull());
    assertThat(P4.says("part-full-stretch")).isFalse();
  }
}
