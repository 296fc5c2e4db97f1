package tankyard.engine.pipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.fluids.Water;

class LineLawTest {
  private static final Liquid WATER = new Liquid(1000, 1e-3);
  private static final double RHO_G = 1000 * Water.STANDARD_GRAVITY;
  private static final double Q = 1e-3;

  private static LineLaw over(double[] distance, double[] elevation) {
    return LineLaw.of(
        new PipeRun(0.05, 1e-5, PipePath.of(distance, elevation), MinorLosses.ofK(10)));
  }

  /** Up 20 m to a crest at 400 m, then down 35 m to the end at 1000 m. */
  private static LineLaw hill() {
    return over(new double[] {0, 400, 1000}, new double[] {0, 20, -15});
  }

  @Test
  void without_a_crest_the_upstream_pressure_is_downstream_plus_lift_plus_friction() {
    LineLaw line = over(new double[] {0, 300, 1000}, new double[] {0, 4, 12});
    double friction = line.friction(WATER).drop(Q).pascals();

    MarchResult r = line.march(Q, WATER, 5000);

    assertThat(r.control()).isEmpty();
    assertThat(r.upstreamPascals()).isCloseTo(5000 + 12 * RHO_G + friction, within(1e-6));
    assertThat(r.staticPascals()).isCloseTo(12 * RHO_G, within(1e-6));
    assertThat(r.frictionPascals()).isCloseTo(friction, within(1e-6));
    assertThat(r.upstreamPerDownstream()).isEqualTo(1);
    assertThat(r.partFull()).isEmpty();
    assertThat(r.siphonUpstreamPascals()).isCloseTo(r.upstreamPascals(), within(1e-6));
  }

  @Test
  void past_a_crest_nothing_pulls_and_only_the_way_up_counts() {
    double upTo = 0.4 * hill().friction(WATER).drop(Q).pascals();

    MarchResult r = hill().march(Q, WATER, 0);

    assertThat(r.control()).contains(new ControlPoint(0, 1, 400, 20));
    assertThat(r.staticPascals()).isCloseTo(20 * RHO_G, within(1e-6));
    assertThat(r.frictionPascals()).isCloseTo(upTo, within(1e-6));
    assertThat(r.upstreamPascals()).isCloseTo(20 * RHO_G + upTo, within(1e-6));
    assertThat(r.upstreamPerDownstream()).isZero();
    assertThat(r.points().get(1).gaugePascals()).isZero();
    assertThat(r.points().get(1).siphonPascals()).isLessThan(-200_000);
  }

  @Test
  void behind_a_crest_the_line_runs_part_full_down_to_where_the_far_end_holds_it_full() {
    double perMetre = hill().friction(WATER).drop(Q).pascals() / 1000;
    double fallPerMetre = 35.0 / 600 * RHO_G - perMetre;
    double held = 60_000 / fallPerMetre;

    MarchResult r = hill().march(Q, WATER, 60_000);

    assertThat(r.partFull()).hasSize(1);
    assertThat(r.partFull().get(0).fromM()).isEqualTo(400);
    assertThat(r.partFull().get(0).toM()).isCloseTo(1000 - held, within(1e-6));
  }

  @Test
  void enough_pressure_at_the_far_end_fills_the_crest_and_counts_again() {
    MarchResult r = hill().march(Q, WATER, 400_000);

    assertThat(r.control()).isEmpty();
    assertThat(r.upstreamPerDownstream()).isEqualTo(1);
    assertThat(r.partFull()).isEmpty();
  }

  @Test
  void of_two_crests_the_upstream_one_governs_even_if_the_other_is_higher() {
    LineLaw line = over(new double[] {0, 200, 400, 600, 900}, new double[] {0, 30, 5, 10, -40});

    MarchResult r = line.march(Q, WATER, 0);

    assertThat(r.control()).hasValueSatisfying(c -> assertThat(c.distanceM()).isEqualTo(200));
    assertThat(r.partFull()).hasSize(2);
  }

  @Test
  void the_lower_farther_crest_governs_only_at_a_high_rate() {
    LineLaw line = over(new double[] {0, 200, 500, 800, 1000}, new double[] {0, 20, 2, 16, -20});
    for (double rate : new double[] {1e-4, 1.5e-3}) {
      double friction = line.friction(WATER).drop(rate).pascals();
      double near = 20 * RHO_G + 0.2 * friction;
      double far = 16 * RHO_G + 0.8 * friction;

      MarchResult r = line.march(rate, WATER, 0);

      assertThat(far > near).as("rate %s", rate).isEqualTo(rate > 1e-3);
      assertThat(r.upstreamPascals()).isCloseTo(Math.max(near, far), within(1e-6));
      assertThat(r.control())
          .hasValueSatisfying(c -> assertThat(c.distanceM()).isEqualTo(far > near ? 800 : 200));
    }
  }

  @Test
  void a_line_that_only_falls_drains_and_asks_for_nothing() {
    MarchResult r = over(new double[] {0, 500}, new double[] {30, 0}).march(Q, WATER, 0);

    assertThat(r.upstreamPascals()).isZero();
    assertThat(r.upstreamPerFlow()).isZero();
    assertThat(r.control()).hasValueSatisfying(c -> assertThat(c.distanceM()).isZero());
    assertThat(r.partFull()).containsExactly(new PartFull(0, 500));
  }

  @Test
  void backward_flow_is_the_mirrored_line() {
    LineLaw mirrored = over(new double[] {0, 600, 1000}, new double[] {-15, 20, 0});

    MarchResult back = hill().march(-Q, WATER, 3000);
    MarchResult same = mirrored.march(Q, WATER, 3000);

    assertThat(back.upstreamPascals()).isCloseTo(same.upstreamPascals(), within(1e-6));
    assertThat(back.control().orElseThrow().distanceM()).isEqualTo(400);
    assertThat(back.points().get(0).gaugePascals()).isEqualTo(3000);
    assertThat(back.flows().get(0).velocityMPerS()).isNegative();
  }

  @Test
  void rounding_makes_no_crest_of_two_ends_at_one_height() {
    LineLaw dip = over(new double[] {0, 100, 200, 300}, new double[] {258.1, 250.7, 251.3, 258.1});

    MarchResult r = dip.march(0, WATER, 0);

    assertThat(r.control()).isEmpty();
    assertThat(r.partFull()).isEmpty();
  }

  @Test
  void standing_still_costs_the_height_alone() {
    MarchResult r = hill().march(0, WATER, 0);

    assertThat(r.upstreamPascals()).isCloseTo(20 * RHO_G, within(1e-6));
    assertThat(r.frictionPascals()).isZero();
    assertThat(r.flows().get(0).regime()).isEqualTo(FlowRegime.STILL);
  }

  @Test
  void the_slope_by_flow_is_a_difference_quotient() {
    for (double downstream : new double[] {0, 400_000}) {
      double h = 1e-9;
      double quotient =
          (hill().march(Q + h, WATER, downstream).upstreamPascals()
                  - hill().march(Q - h, WATER, downstream).upstreamPascals())
              / (2 * h);
      assertThat(hill().march(Q, WATER, downstream).upstreamPerFlow())
          .isCloseTo(quotient, within(1e-4 * quotient));
    }
  }

  @Test
  void cutting_a_line_in_two_runs_changes_nothing() {
    PipeRun up = new PipeRun(0.05, 1e-5, PipePath.straight(400, 20), MinorLosses.ofK(4));
    PipeRun down = new PipeRun(0.05, 1e-5, PipePath.straight(600, -35), MinorLosses.ofK(6));
    MarchResult whole = hill().march(Q, WATER, 60_000);

    MarchResult parts = LineLaw.of(List.of(up, down)).march(Q, WATER, 60_000);

    assertThat(parts.upstreamPascals()).isCloseTo(whole.upstreamPascals(), within(1e-6));
    assertThat(parts.partFull().get(0).toM())
        .isCloseTo(whole.partFull().get(0).toM(), within(1e-6));
    assertThat(parts.flows()).hasSize(2);
  }

  @Test
  void the_printed_workings_give_the_marched_numbers() {
    for (double flow : new double[] {Q, -Q, 5e-5, 1.2e-4}) {
      MarchResult r = hill().march(flow, WATER, 0);
      LineWorking workings = new LineWorking(hill(), flow, WATER, r);

      for (var part : List.of(workings.lift(), workings.friction())) {
        double value = part.value().toPsi();
        assertThat(part.working().value()).isCloseTo(value, within(1e-4 * Math.abs(value)));
      }
    }
  }
}
