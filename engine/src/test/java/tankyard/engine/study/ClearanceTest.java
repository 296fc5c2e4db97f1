package tankyard.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Looked;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tank;

/** Distances as they would be taped on the ground. */
class ClearanceTest {
  private static final Lease P1 = Looked.at("p1-osage-bend").evidence().lease();

  private static Clearance of(Lease lease, String from, Clearance.Kind kind) {
    return Clearance.of(lease).stream()
        .filter(c -> c.from().equals(from) && c.kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  /** Put 60 ft apart, the shells stand clear by that less half of both diameters. */
  @Test
  void tanksStandClearByWhatIsBetweenTheirShells() {
    Tank first = P1.tanks().get(0);
    Tank second = P1.tanks().get(1);
    Lease lease =
        P1.with(first.movedTo(MapPoint.ofFeet(9000, 9000)))
            .with(second.movedTo(MapPoint.ofFeet(9060, 9000)));
    double halves = (first.diameter().toFeet() + second.diameter().toFeet()) / 2;
    Clearance clear = of(lease, first.id(), Clearance.Kind.TANK);

    assertThat(clear.to()).isEqualTo(second.id());
    assertThat(clear.clear().value().toFeet()).isCloseTo(60 - halves, within(1e-6));
    assertThat(of(lease, second.id(), Clearance.Kind.TANK).clear().value().toFeet())
        .isCloseTo(60 - halves, within(1e-6));
  }

  @Test
  void aSeparatorThatLiesIsTakenAsRoundAsItIsLong() {
    Separator separator = P1.separators().get(0);
    Tank tank = P1.tanks().get(0);
    Lease lease =
        P1.with(separator.movedTo(MapPoint.ofFeet(9000, 9000)))
            .with(tank.movedTo(MapPoint.ofFeet(9000, 9050)));
    double halves = (separator.length().toFeet() + tank.diameter().toFeet()) / 2;

    assertThat(separator.shape()).isEqualTo(Separator.Shape.HORIZONTAL);
    assertThat(of(lease, tank.id(), Clearance.Kind.SEPARATOR).clear().value().toFeet())
        .isCloseTo(50 - halves, within(1e-6));
  }

  @Test
  void whatOverlapsHasNoDistanceAndWhatGoesIsNotCounted() {
    Tank first = P1.tanks().get(0);
    Tank second = P1.tanks().get(1).movedTo(first.at());

    assertThat(of(P1.with(second), first.id(), Clearance.Kind.TANK).clear().value().toFeet())
        .isZero();
    List<String> named =
        Clearance.of(P1.with(second.withStatus(Status.REMOVE))).stream()
            .flatMap(c -> java.util.stream.Stream.of(c.from(), c.to()))
            .toList();
    assertThat(named).doesNotContain(second.id()).contains(first.id());
  }
}
