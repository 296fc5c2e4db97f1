package tankyard.engine.wells;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class RunningTogetherTest {
  private record Well(double rate, double share) {}

  /** One of the ways the wells can run, by trying all of them. */
  private record Way(double rate, double chance) {}

  private static List<Way> everyWay(List<Well> wells) {
    List<Way> ways = new ArrayList<>();
    for (int on = 0; on < 1 << wells.size(); on++) {
      double rate = 0;
      double chance = 1;
      for (int i = 0; i < wells.size(); i++) {
        boolean runs = (on >> i & 1) == 1;
        rate += runs ? wells.get(i).rate() : 0;
        chance *= runs ? wells.get(i).share() : 1 - wells.get(i).share();
      }
      ways.add(new Way(rate, chance));
    }
    return ways;
  }

  private static RunningTogether together(List<Well> wells) {
    RunningTogether sum = RunningTogether.NONE;
    for (Well well : wells) {
      sum = sum.and(well.rate(), well.share());
    }
    return sum;
  }

  private static List<Well> some(Random random, int count) {
    List<Well> wells = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double rate = random.nextBoolean() ? 30 : 1 + 99 * random.nextDouble();
      wells.add(new Well(rate, random.nextInt(4) == 0 ? 1 : 0.02 + 0.97 * random.nextDouble()));
    }
    return wells;
  }

  @Test
  void up_to_twelve_wells_agree_with_trying_every_way_they_can_run() {
    Random random = new Random(7);
    for (int i = 0; i < 300; i++) {
      List<Well> wells = some(random, 1 + i % 12);
      RunningTogether sum = together(wells);
      List<Way> ways = everyWay(wells);
      for (Way way : ways.subList(0, Math.min(40, ways.size()))) {
        double above =
            ways.stream().filter(w -> w.rate() > way.rate() + 1e-7).mapToDouble(Way::chance).sum();
        assertThat(sum.chanceAbove(way.rate())).isCloseTo(above, within(1e-12));
      }
      double all = wells.stream().mapToDouble(Well::rate).sum();
      assertThat(sum.allOn()).isCloseTo(all, within(1e-9));
    }
  }

  @Test
  void the_rate_not_passed_is_the_least_of_which_that_is_true() {
    Random random = new Random(8);
    for (int i = 0; i < 200; i++) {
      RunningTogether sum = together(some(random, 2 + i % 11));
      double share = 0.5 + random.nextDouble() / 2;
      double rate = sum.notPassed(share);
      assertThat(sum.chanceAbove(rate)).isLessThanOrEqualTo(1 - share + 1e-9);
      assertThat(sum.chanceAbove(rate * (1 - 1e-7))).isGreaterThan(1 - share - 1e-9);
    }
  }

  @Test
  void the_order_in_which_wells_are_added_does_not_matter() {
    List<Well> wells = some(new Random(9), 12);
    List<Well> turned = new ArrayList<>(wells);
    Collections.reverse(turned);
    for (double share : new double[] {0.5, 0.9, 0.95, 0.99, 1}) {
      assertThat(together(turned).notPassed(share))
          .isCloseTo(together(wells).notPassed(share), within(1e-9));
    }
  }

  @Test
  void wells_that_are_alike_make_few_sums() {
    RunningTogether sum = together(Collections.nCopies(500, new Well(12.7, 0.4)));
    assertThat(sum.sums()).isEqualTo(501);
    assertThat(sum.chanceOfAllOn()).isCloseTo(Math.pow(0.4, 500), within(1e-200));
    assertThat(sum.notPassed(0.95)).isBetween(12.7 * 200, 12.7 * 250);
  }

  @Test
  void wells_that_run_all_day_are_always_in_it() {
    RunningTogether sum = together(List.of(new Well(10, 1), new Well(20, 1)));
    assertThat(sum.sums()).isEqualTo(1);
    assertThat(sum.notPassed(0.5)).isEqualTo(30);
    assertThat(sum.chanceOfAllOn()).isEqualTo(1);
  }

  @Test
  void a_well_that_never_runs_is_refused() {
    assertThatThrownBy(() -> RunningTogether.NONE.and(5, 0)).hasMessageContaining("above 0");
    assertThatThrownBy(() -> RunningTogether.NONE.and(-5, 0.5)).hasMessageContaining("-5");
  }

  @Test
  void a_dozen_wells_of_any_kind_are_left_exact() {
    List<Double> rates = some(new Random(3), 12).stream().map(Well::rate).toList();
    RateSteps steps = RateSteps.of(rates);
    assertThat(steps.exact()).isTrue();
    assertThat(steps.up(17.123)).isEqualTo(17.123);
    assertThat(steps.mostOver(12)).isZero();
  }

  @Test
  void many_different_wells_are_rounded_up_and_by_no_more_than_the_stated_bound() {
    Random random = new Random(5);
    List<Well> wells = new ArrayList<>();
    for (int i = 0; i < 18; i++) {
      wells.add(new Well(5 + 50 * random.nextDouble(), 0.1 + 0.8 * random.nextDouble()));
    }
    RateSteps steps = RateSteps.of(wells.stream().map(Well::rate).collect(Collectors.toList()));
    assertThat(steps.exact()).isFalse();
    RunningTogether exact = together(wells);
    RunningTogether stepped =
        together(wells.stream().map(w -> new Well(steps.up(w.rate()), w.share())).toList());
    assertThat(exact.sums()).isGreaterThan(100_000);
    assertThat(stepped.sums()).isLessThan(4000);
    for (double share : new double[] {0.5, 0.9, 0.95, 0.99}) {
      assertThat(stepped.notPassed(share) - exact.notPassed(share))
          .isBetween(-1e-9, steps.mostOver(18));
    }
    assertThat(steps.mostOver(18)).isLessThan(0.006 * exact.allOn());
  }
}
