package tankyard.engine.pipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import tankyard.engine.fluids.Liquid;

/** Whatever the ground looks like. */
class LineLawPropertyTest {
  private static final Liquid BRINE = new Liquid(1060, 1.2e-3);

  @Provide
  Arbitrary<List<Double>> heights() {
    return Arbitraries.doubles().between(-40, 40).list().ofMinSize(2).ofMaxSize(12);
  }

  private static LineLaw line(List<Double> heights) {
    double[] distance = new double[heights.size()];
    double[] elevation = new double[heights.size()];
    for (int i = 0; i < distance.length; i++) {
      distance[i] = 120.0 * i;
      elevation[i] = heights.get(i);
    }
    return LineLaw.of(
        new PipeRun(0.05, 4.6e-5, PipePath.of(distance, elevation), MinorLosses.ofK(5)));
  }

  @Property
  void no_point_falls_below_the_air_and_the_parts_add_up(
      @ForAll("heights") List<Double> heights,
      @ForAll @Scale(6) @DoubleRange(min = -3e-3, max = 3e-3) double flow,
      @ForAll @DoubleRange(min = 0, max = 5e5) double downstream) {
    MarchResult r = line(heights).march(flow, BRINE, downstream);

    assertThat(r.points()).allSatisfy(p -> assertThat(p.gaugePascals()).isNotNegative());
    double base = r.control().isPresent() ? 0 : downstream;
    assertThat(base + r.staticPascals() + r.frictionPascals())
        .isCloseTo(r.upstreamPascals(), within(2e-6));
    assertThat(r.upstreamPascals()).isGreaterThanOrEqualTo(r.siphonUpstreamPascals() - 1e-6);
  }

  @Property
  void more_flow_or_more_pressure_downstream_never_asks_for_less(
      @ForAll("heights") List<Double> heights,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 3e-3) double flow,
      @ForAll @DoubleRange(min = 0, max = 5e5) double downstream) {
    double now = line(heights).march(flow, BRINE, downstream).upstreamPascals();
    assertThat(line(heights).march(flow * 1.01 + 1e-9, BRINE, downstream).upstreamPascals())
        .isGreaterThanOrEqualTo(now);
    assertThat(line(heights).march(flow, BRINE, downstream + 100).upstreamPascals())
        .isGreaterThanOrEqualTo(now);
  }

  @Property
  void a_small_change_makes_a_small_change_also_where_the_control_point_jumps(
      @ForAll("heights") List<Double> heights,
      @ForAll @Scale(6) @DoubleRange(min = 1e-5, max = 3e-3) double flow,
      @ForAll @DoubleRange(min = 0, max = 5e5) double downstream) {
    double before = line(heights).march(flow, BRINE, downstream).upstreamPascals();
    double after =
        line(heights).march(flow * (1 + 1e-7), BRINE, downstream + 0.01).upstreamPascals();
    assertThat(after - before).isLessThan(1);
  }

  @Property
  void enough_pressure_everywhere_makes_the_siphon_and_the_line_agree(
      @ForAll("heights") List<Double> heights,
      @ForAll @Scale(6) @DoubleRange(min = -3e-3, max = 3e-3) double flow) {
    MarchResult r = line(heights).march(flow, BRINE, 2e6);
    assertThat(r.control()).isEmpty();
    assertThat(r.partFull()).isEmpty();
    assertThat(r.upstreamPascals()).isCloseTo(r.siphonUpstreamPascals(), within(1e-6));
  }
}
