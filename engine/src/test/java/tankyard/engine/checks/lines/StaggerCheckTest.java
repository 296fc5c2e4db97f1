package tankyard.engine.checks.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.SharedLine;
import tankyard.engine.units.Pressure;

/** The trunk of Coyote Creek: nine wells of 42 bbl/d into one short line. */
class StaggerCheckTest {
  private static final Object EIGHT_HOURS = Looked.amount(8, "h");

  private static Looked timed(Object hours) {
    return Looked.at("p3-coyote-creek")
        .withEach("/wells", "runsPerDay", hours)
        .with("/lines/9/length", 2000, "ft");
  }

  private static SharedLine trunk(Looked looked) {
    return looked.evidence().cases().get(0).shared().get(0);
  }

  private static CaseResult losing(CaseResult result, double savedPsi) {
    return result.withShared(
        result.shared().stream()
            .map(
                s ->
                    s.withAllOnLoss(Pressure.ofPsi(5 + savedPsi))
                        .withStaggered(
                            s.staggered()
                                .map(
                                    t ->
                                        new SharedLine.Staggered(
                                            t.rate(), Pressure.ofPsi(5), t.first(), t.second()))))
            .toList());
  }

  @Test
  void wells_alike_are_dealt_evenly_and_the_peak_falls_to_the_larger_bank() {
    SharedLine trunk = trunk(timed(EIGHT_HOURS));
    SharedLine.Staggered staggered = trunk.staggered().orElseThrow();
    assertThat(trunk.wellIds()).hasSize(9);
    assertThat(trunk.average().toBarrelsPerDay()).isCloseTo(378, within(1e-6));
    assertThat(trunk.allOn().toBarrelsPerDay()).isCloseTo(3 * 378, within(1e-6));
    assertThat(staggered.first()).hasSize(5);
    assertThat(staggered.second()).hasSize(4);
    assertThat(staggered.rate().toBarrelsPerDay()).isCloseTo(5 * 126, within(1e-6));
    assertThat(staggered.loss().toPsi()).isLessThan(trunk.allOnLoss().toPsi());
  }

  @Test
  void nine_wells_on_a_third_of_the_day_are_five_at_once_nineteen_twentieths_of_it() {
    SharedLine trunk = trunk(timed(EIGHT_HOURS));
    assertThat(trunk.atOnce().value().toBarrelsPerDay()).isCloseTo(5 * 126, within(1e-6));
    assertThat(trunk.allOnShare().ratio()).isCloseTo(Math.pow(1 / 3.0, 9), within(1e-12));
    assertThat(trunk.atOnce().working().value()).isCloseTo(630, within(0.01));
  }

  @Test
  void the_share_of_the_time_is_the_leases_to_choose() {
    Looked looked = timed(EIGHT_HOURS).with("/practice/atOnce", 99, "%");
    assertThat(trunk(looked).atOnce().value().toBarrelsPerDay()).isCloseTo(6 * 126, within(1e-6));
  }

  @Test
  void a_peak_that_two_banks_would_halve_is_told_with_both_banks() {
    Finding finding = timed(EIGHT_HOURS).the("stagger-wells");
    assertThat(finding.words()).contains("1134 bbl/d").contains("630 bbl/d").contains("less on");
    assertThat(finding.wayOut().get(0)).contains("Well 1").contains("the other");
  }

  @Test
  void wells_that_need_more_than_half_the_day_cant_be_kept_apart() {
    Looked looked = timed(Looked.amount(12.01, "h"));
    assertThat(trunk(looked).staggered()).isEmpty();
    assertThat(looked.says("stagger-wells")).isFalse();
  }

  @Test
  void half_a_day_is_just_enough() {
    assertThat(trunk(timed(Looked.amount(720, "min"))).staggered()).isPresent();
  }

  @Test
  void half_a_psi_is_told_and_less_is_not() {
    Looked looked = timed(EIGHT_HOURS);
    assertThat(looked.seeing(c -> losing(c, 0.5)).says("stagger-wells")).isTrue();
    assertThat(looked.seeing(c -> losing(c, 0.499)).says("stagger-wells")).isFalse();
  }
}
