package tankyard.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Looked;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.vessels.Settling;

/** Which drops a drawn separator parts. */
class SettledDropsTest {
  private static final Looked P2 = Looked.at("p2-sandstone-knob");
  private static final Looked COLD =
      P2.with("/cases/0/season", "winter").with("/site/groundWinter", "45 °F");

  private static SeparatorResult separator(Looked lease) {
    return lease.caseOf("today").separator("S1").orElseThrow();
  }

  /** Both layers of the 24-inch vessel stand 1 ft deep: the interface is typed mid-vessel. */
  @Test
  void itsSmallestDropsJustCrossTheirLayersInTheTimeTheyHave() {
    SeparatorResult separator = separator(P2);
    CaseStudy study = new CaseStudy(P2.evidence().survey(), P2.evidence().lease().cases().get(0));
    Gravity oil = study.oil().gravity().value();
    Gravity brine = study.brine().gravity().value();
    Length waterDrop = separator.waterDrops().orElseThrow().value();
    Length oilDrop = separator.oilDrops().orElseThrow().value();

    double falls =
        Settling.of(waterDrop, brine, oil, study.oil().viscosity().value()).value().si()
            * separator.oilMinutes().orElseThrow().value().seconds();
    double rises =
        Settling.of(oilDrop, oil, brine, study.brine().viscosity().value()).value().si()
            * separator.waterMinutes().orElseThrow().value().seconds();

    assertThat(Unit.FOOT.fromSi(falls)).isCloseTo(1, within(1e-9));
    assertThat(Unit.FOOT.fromSi(rises)).isCloseTo(-1, within(1e-9));
  }

  @Test
  void coldOilHoldsLargerWaterDrops() {
    Length warm = separator(P2).waterDrops().orElseThrow().value();
    Length cold = separator(COLD).waterDrops().orElseThrow().value();

    assertThat(cold.metres()).isGreaterThan(warm.metres());
  }

  @Test
  void nothingPartsWhereTheOilDoesNotFloat() {
    SeparatorResult sunk = separator(P2.with("/fluids/oil", "1.1 SG"));

    assertThat(sunk.waterDrops()).isEmpty();
    assertThat(sunk.oilDrops()).isEmpty();
  }
}
