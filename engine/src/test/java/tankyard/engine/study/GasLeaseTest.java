package tankyard.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.checks.Looked;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.LeaseBuilder;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.LineBuilder;
import tankyard.engine.lease.Separator;
import tankyard.engine.units.Pressure;
import tankyard.engine.window.PressureLimit;

/** What gas does to a whole lease, and what the absence of gas leaves alone. */
class GasLeaseTest {
  private static final Looked DRY = Looked.at("p1-osage-bend");
  private static final Looked SHARED = Looked.at("p3-coyote-creek");

  private static Looked gas(Looked lease, double mcf) {
    return lease.withEach("/wells", "gas", Looked.amount(mcf, "Mcf/d"));
  }

  private static LineResult line(Looked lease, String id) {
    return lease.caseOf("today").line(id).orElseThrow();
  }

  @Test
  void noGasTypedAndGasOfNothingGiveTheSameDigits() {
    Looked nothing = gas(DRY, 0);

    for (String id : new String[] {"FL-W1", "FL-W2", "FL-W3", "FL-W4"}) {
      assertThat(line(nothing, id).points()).isEqualTo(line(DRY, id).points());
      assertThat(line(nothing, id).friction().value()).isEqualTo(line(DRY, id).friction().value());
      assertThat(line(nothing, id).gas()).isEmpty();
    }
  }

  /** 3 bbl/d of oil at about 10 psi hold a good 1 scf/bbl, so 1 scf/d is all in solution. */
  @Test
  void gasThatTheOilHoldsLeavesTheLineAsItWas() {
    Looked held = gas(DRY, 0.001);

    assertThat(line(held, "FL-W1").gas()).isEmpty();
    assertThat(line(held, "FL-W1").points()).isEqualTo(line(DRY, "FL-W1").points());
    assertThat(held.window().notValid()).isEmpty();
    assertThat(held.caseOf("today").separator("S1").orElseThrow().gas()).isEmpty();
  }

  /** Near the last of the free gas the answer is that without gas, within a share of the gas's. */
  @Test
  void lessAndLessGasComesDownToNone() {
    LineResult without = line(DRY, "FL-W1");
    double all = without.lift().value().toPsi() + without.friction().value().toPsi();
    for (double mcf : new double[] {0.02, 0.015, 0.0125, 0.01, 0.0085}) {
      LineResult with = line(gas(DRY, mcf), "FL-W1");
      double part = with.gas().orElseThrow().gasPart().ratio();
      assertThat(with.start().toPsi())
          .as("%s Mcf/d, %s of the volume", mcf, part)
          .isCloseTo(without.start().toPsi(), within(part * all));
    }
  }

  @Test
  void theHeaderCarriesTheGasOfAllItsWells() {
    Looked gassy = gas(SHARED, 2);
    GasInLine header = line(gassy, "FL-H1").gas().orElseThrow();

    assertThat(header.all().toMcfPerDay()).isCloseTo(18, within(1e-9));
    assertThat(header.free().toMcfPerDay()).isBetween(17.5, 18.0);
    assertThat(
            gassy
                .caseOf("all-on")
                .line("FL-H1")
                .orElseThrow()
                .gas()
                .orElseThrow()
                .all()
                .toMcfPerDay())
        .isCloseTo(27, within(1e-9));
  }

  @Test
  void boxesAddUpFromGaugeLiftAndLoss() {
    for (Looked lease : new Looked[] {gas(DRY, 3), gas(SHARED, 2)}) {
      for (WellResult well : lease.caseOf("today").wells()) {
        assertThat(well.box().working().value())
            .as(well.wellId())
            .isCloseTo(well.box().value().toPsi(), within(1e-3));
      }
    }
  }

  /** With the gauge at the most that a box allows, the box stands at its limit. */
  @Test
  void theMostOfABoxIsWhereItsLimitIsReached() {
    Looked gassy = gas(DRY, 3);
    Survey survey = gassy.evidence().survey();
    CaseStudy study = new CaseStudy(survey, survey.lease().cases().get(0));
    Separator separator = survey.separators().get(0);
    int seen = 0;
    for (PressureLimit limit : gassy.window().allowed()) {
      if (limit.kind() == PressureLimit.Kind.STUFFING_BOX) {
        GatheringState state =
            study.gatheringAt(Map.of(separator.id(), limit.gauge().value().pascals()));
        assertThat(state.boxPa(limit.thingId()))
            .isCloseTo(Pressure.ofPsi(40).pascals(), within(10.0));
        seen++;
      }
    }
    assertThat(seen).isEqualTo(4);
  }

  @Test
  void theGoverningPipeRatingIsReachedAtItsReading() {
    Looked gassy = gas(DRY, 3).with("/ownPipes/2/ratingOil", 15, "psi");
    Survey survey = gassy.evidence().survey();
    CaseStudy study = new CaseStudy(survey, survey.lease().cases().get(0));
    PressureLimit most =
        gassy.window().allowed().stream()
            .filter(l -> l.kind() == PressureLimit.Kind.PIPE_RATING)
            .findFirst()
            .orElseThrow();
    GatheringState state = study.gatheringAt(Map.of("S1", most.gauge().value().pascals()));
    double highest =
        state.runs().stream()
            .filter(r -> r.laid().id().equals(most.thingId()))
            .mapToDouble(LineRun::highestPa)
            .max()
            .orElseThrow();

    assertThat(highest).isCloseTo(Pressure.ofPsi(15).pascals(), within(20.0));
  }

  @Test
  void aLineDrawnTheOtherWayCostsTheSame() {
    Looked gassy = gas(DRY, 3).with("/separators/0/regulator/setting", "9 psi");
    LineResult there = line(gassy, "FL-W1");
    LineResult back = turned(gassy.evidence().survey(), "FL-W1");

    assertThat(back.end().toPsi()).isCloseTo(there.start().toPsi(), within(1e-6));
    assertThat(back.points().get(0).gas().orElseThrow().holdUp().ratio())
        .isCloseTo(
            there.points().get(there.points().size() - 1).gas().orElseThrow().holdUp().ratio(),
            within(1e-9));
    assertThat(back.points().get(0).distance().toFeet()).isCloseTo(0, within(1e-9));
  }

  /** Files are drawn the way the fluid goes, so this one can only be made here. */
  private static LineResult turned(Survey survey, String lineId) {
    Lease lease = survey.lease();
    List<Line> lines =
        lease.lines().stream()
            .map(
                l ->
                    l.id().equals(lineId)
                        ? LineBuilder.builder(l).from(l.to()).to(l.from()).build()
                        : l)
            .toList();
    Survey other = Survey.of(LeaseBuilder.builder(lease).lines(lines).build(), Catalog.empty());
    Map<String, Double> gauges = Map.of("S1", Pressure.ofPsi(9).pascals());
    return CaseReport.of(new CaseStudy(other, lease.cases().get(0)), gauges)
        .line(lineId)
        .orElseThrow();
  }

  @Test
  void theSameLeaseGivesTheSameBits() {
    assertThat(line(gas(DRY, 3), "FL-W2").points()).isEqualTo(line(gas(DRY, 3), "FL-W2").points());
  }
}
