package tankyard.engine.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import tankyard.engine.study.LegRun;
import tankyard.engine.window.PressureLimit;

/** Ridges and shoulders: what holds a leg need not be the top of a hill. */
class RidgeTest {
  private static final double PSI = 6894.757293168;

  /** The tank 4,800 ft away, and the ground at these distances. */
  private static Design far(double... distanceAndGround) {
    List<Object> route = new ArrayList<>();
    for (int i = 0; i < distanceAndGround.length; i += 2) {
      route.add(peg(distanceAndGround[i], distanceAndGround[i + 1]));
    }
    return Design.of("p2-sandstone-knob-2in")
        .with("/lines/2/route", route)
        .with("/tanks/1/at/east", Design.amount(4800, "ft"));
  }

  private static Map<String, Object> peg(double east, double ground) {
    return Map.of(
        "at",
        Map.of("east", Design.amount(east, "ft"), "north", Design.amount(0, "ft")),
        "ground",
        Design.amount(ground, "ft"));
  }

  private static LegRun leg(Design design) {
    return design.studies.get(0).waterLegs(design.survey.lease().separators().get(0)).get(0);
  }

  private static double leastPsi(Design design) {
    return design.least().gauge().value().toPsi();
  }

  @Test
  void aRidgeHoldsTheLegAtItsFarEdge() {
    Design ridge = far(400, 912, 1000, 931, 4000, 931, 4400, 905);
    assertThat(ridge.least().kind()).isEqualTo(PressureLimit.Kind.CREST);
    assertThat(ridge.least().name()).startsWith("crest 4,000 ft");
    // Along the level ridge the loss goes on: five sixths of the leg's, and not one.
    LegRun leg = leg(ridge);
    assertThat(ridge.least().friction().toPsi() * PSI)
        .isCloseTo(leg.wholeFrictionPa() * 4000 / 4800, within(0.005 * leg.wholeFrictionPa()));
  }

  @Test
  void aRidgeThatRisesByAHairAsksForAHairMore() {
    double level = leastPsi(far(400, 912, 1000, 931, 4000, 931, 4400, 905));
    double rising = leastPsi(far(400, 912, 1000, 931, 4000, 931.01, 4400, 905));
    double falling = leastPsi(far(400, 912, 1000, 931, 4000, 930.99, 4400, 905));
    assertThat(rising).isCloseTo(level, within(0.01));
    assertThat(falling).isCloseTo(level, within(0.01));
  }

  @Test
  void aShoulderHoldsTheLegWhereTheGroundFallsSlowerThanTheLineLoses() {
    Design shoulder = far(400, 912, 1000, 931, 4000, 929, 4400, 905);
    assertThat(shoulder.least().name()).startsWith("crest 4,000 ft");
    assertThat(shoulder.window.needed().stream())
        .noneMatch(limit -> limit.name().startsWith("crest 1,000 ft"));
  }

  /** The march steps back from the tank and cuts where the pressure would fall below the air's. */
  @Test
  void whatHoldsALegIsWhatItsMarchNeeds() {
    Random random = new Random(20261128);
    int held = 0;
    for (int n = 0; n < 200; n++) {
      LegRun leg = leg(far(drawn(random)));
      double start = leg.startM();
      double end = needPa(leg, leg.endM() - start, leg.wholeFrictionPa());
      double needed =
          DoubleStream.concat(
                  DoubleStream.of(0, end),
                  leg.highPoints().stream()
                      .mapToDouble(h -> needPa(leg, h.elevationM() - start, h.frictionPa())))
              .max()
              .orElseThrow();
      assertThat(leg.needPa()).as("leg %d", n).isCloseTo(needed, within(1.0));
      held += needed > end ? 1 : 0;
    }
    assertThat(held).as("held on the way").isBetween(60, 190);
  }

  private static double needPa(LegRun leg, double upM, double frictionPa) {
    return leg.liquid().liquid().staticPascals(upM) + frictionPa;
  }

  private static double[] drawn(Random random) {
    int pegs = 1 + random.nextInt(8);
    double[] route = new double[2 * pegs];
    for (int i = 0; i < pegs; i++) {
      route[2 * i] = 4800.0 * (i + 0.1 + 0.8 * random.nextDouble()) / pegs;
      route[2 * i + 1] = 895 + 40 * random.nextDouble();
    }
    return route;
  }
}
