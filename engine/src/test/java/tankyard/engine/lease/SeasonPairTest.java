package tankyard.engine.lease;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.units.Fraction;

class SeasonPairTest {
  private static final DesignCase SUMMER = of("summer", DesignCase.Season.SUMMER, 1);
  private static final DesignCase GROWN = of("grown", DesignCase.Season.WINTER, 1.33);
  private static final DesignCase WINTER = of("winter", DesignCase.Season.WINTER, 1);

  private static DesignCase of(String id, DesignCase.Season season, double water) {
    return new DesignCase(
        id,
        id,
        season,
        DesignCase.Running.AVERAGE,
        Optional.empty(),
        Optional.of(Fraction.ofRatio(water)),
        Optional.empty());
  }

  private static DesignCase allOn(DesignCase other) {
    return new DesignCase(
        other.id() + " on",
        other.name(),
        other.season(),
        DesignCase.Running.ALL_ON,
        other.oil(),
        other.water(),
        other.sharedSurge());
  }

  @Test
  void likeIsPairedWithLikeWhateverTheOrder() {
    assertThat(SeasonPair.of(List.of(GROWN, SUMMER, WINTER)))
        .containsExactly(new SeasonPair(SUMMER, WINTER, true));
    assertThat(SeasonPair.of(List.of(SUMMER, allOn(SUMMER), GROWN, allOn(WINTER), WINTER)))
        .containsExactly(
            new SeasonPair(SUMMER, WINTER, true),
            new SeasonPair(allOn(SUMMER), allOn(WINTER), true));
  }

  @Test
  void whereNoneAreAlikeTheNearestTwoAreHeldTogetherAndSoCalled() {
    assertThat(SeasonPair.of(List.of(SUMMER, allOn(GROWN), GROWN)))
        .containsExactly(new SeasonPair(SUMMER, GROWN, false));
  }

  @Test
  void oneSeasonAloneHasNoPair() {
    assertThat(SeasonPair.of(List.of(WINTER, GROWN))).isEmpty();
    assertThat(SeasonPair.of(List.of())).isEmpty();
  }
}
