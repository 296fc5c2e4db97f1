package tankyard.engine.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.Price;
import tankyard.engine.catalog.PriceList;
import tankyard.engine.catalog.SeparatorSize;
import tankyard.engine.checks.Looked;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Separator;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.working.Source;

/** Which sizes would do in place of a drawn separator. */
class SeparatorChoicesTest {
  /** P2: 34 API at 70 F, 180 bbl/d of water: the guide asks for 20 min, 2.5 bbl of water. */
  private static final Looked P2 = Looked.at("p2-sandstone-knob");

  private static SeparatorSize size(Separator.Shape shape, double inches, double feet) {
    String id = shape + "-" + inches + "x" + feet;
    return new SeparatorSize(
        id,
        id,
        shape,
        Length.ofInches(inches),
        Length.ofFeet(feet),
        Pressure.ofPsi(125),
        Source.definition("a test"));
  }

  private static SeparatorSize lying(double inches, double feet) {
    return size(Separator.Shape.HORIZONTAL, inches, feet);
  }

  private static List<SeparatorChoice> choices(Looked lease, SeparatorSize... sizes) {
    return choices(lease, PriceList.empty(), sizes);
  }

  private static List<SeparatorChoice> choices(
      Looked lease, PriceList prices, SeparatorSize... sizes) {
    Survey survey = Survey.of(lease.evidence().lease(), Catalog.of(List.of(sizes)));
    return SeparatorChoices.of(
        lease.evidence().lease().cases().stream().map(c -> new CaseStudy(survey, c)).toList(),
        prices);
  }

  private static Price price(SeparatorSize size, int dollars) {
    return new Price(
        size.id(),
        Quote.Basis.EACH,
        BigDecimal.valueOf(dollars),
        "USD",
        LocalDate.of(2026, 11, 25),
        "a test",
        true);
  }

  @Test
  void theSmallestIsPickedAndTheCheapestNamedWithThePriceOfAll() {
    SeparatorSize small = lying(36, 10);
    SeparatorSize large = lying(36, 15);
    PriceList prices = PriceList.of(List.of(price(small, 9000), price(large, 8000)));
    SeparatorChoice choice = choices(P2, prices, small, large, lying(48, 10)).get(0);
    assertThat(choice.pick().orElseThrow().model()).isEqualTo(small.id());
    assertThat(choice.cheapest().orElseThrow().model()).isEqualTo(large.id());
    assertThat(choice.cheapest().orElseThrow().cost().orElseThrow().words()).isEqualTo("8,000 USD");
    assertThat(choice.candidates().get(2).cost()).isEmpty();

    SeparatorSize short6 = lying(24, 6);
    SeparatorChoice two = choices(P2, PriceList.of(List.of(price(short6, 5000))), short6).get(0);
    assertThat(two.cheapest().orElseThrow().cost().orElseThrow().words()).isEqualTo("10,000 USD");
    assertThat(choices(P2, small).get(0).cheapest()).isEmpty();
  }

  private static List<String> models(SeparatorChoice choice) {
    return choice.candidates().stream().map(SeparatorChoice.Candidate::model).toList();
  }

  @Test
  void theSmallestThatHoldsTheGuidesMinutesIsPickedWithItsNeighbours() {
    SeparatorChoice choice =
        choices(
                P2,
                lying(48, 15),
                lying(24, 5),
                lying(24, 7.5),
                lying(36, 10),
                lying(36, 15),
                lying(48, 10))
            .get(0);
    SeparatorChoice.Candidate pick = choice.pick().orElseThrow();

    assertThat(choice.separatorId()).isEqualTo("S1");
    assertThat(models(choice))
        .containsExactly(
            "HORIZONTAL-24.0x7.5",
            "HORIZONTAL-36.0x10.0",
            "HORIZONTAL-36.0x15.0",
            "HORIZONTAL-48.0x10.0");
    assertThat(pick.model()).isEqualTo("HORIZONTAL-36.0x10.0");
    assertThat(pick.caseId()).isEqualTo("today");
    assertThat(choice.candidates().get(0).enough()).isFalse();
    assertThat(choice.candidates().get(0).binds()).startsWith("water stays ").endsWith(" of 20");
  }

  /** Two of the drawn 24 in by 6 ft hold twice its 11.2 min; four of 24 in by 2 ft do not. */
  @Test
  void whereNoSizeIsLargeEnoughTheFewestSideBySideArePicked() {
    SeparatorChoice.Candidate pick = choices(P2, lying(24, 6)).get(0).pick().orElseThrow();

    assertThat(pick.count()).isEqualTo(2);
    assertThat(pick.binds()).isEqualTo("water stays 22.4 min of 20");
    assertThat(pick.words()).startsWith("2 side by side: ");
    assertThat(choices(P2, lying(24, 1)).get(0).pick()).isEmpty();
  }

  /** The drawn 24 in by 6 ft holds 11.2 min: the same size is refused with the same minutes. */
  @Test
  void theDrawnSizeIsWorkedOutAsTheDrawnVesselIs() {
    SeparatorChoice choice = choices(P2, lying(24, 6)).get(0);

    assertThat(choice.candidates().get(0).enough()).isFalse();
    assertThat(choice.candidates().get(0).binds()).isEqualTo("water stays 11.2 min of 20");
    assertThat(choice.candidates().get(0).governs().value())
        .isEqualTo(
            P2.caseOf("today").separator("S1").orElseThrow().waterMinutes().orElseThrow().value());
  }

  @Test
  void anotherShapeAndAnEmptyStoreOfferNothing() {
    assertThat(choices(P2, size(Separator.Shape.VERTICAL, 48, 15))).isEmpty();
    assertThat(choices(P2)).isEmpty();
  }

  /** 36 API oil asks for 3 min only; in the cold case of P6 it is the drops that ask for more. */
  @Test
  void inTheColdTheDropsBind() {
    SeparatorChoice choice = choices(Looked.at("p6-black-wax"), lying(24, 5), lying(48, 15)).get(0);

    assertThat(choice.candidates()).isNotEmpty();
    assertThat(choice.candidates().get(0).binds()).startsWith("water drops from ");
    assertThat(choice.candidates().get(0).caseId()).startsWith("jan");
  }
}
