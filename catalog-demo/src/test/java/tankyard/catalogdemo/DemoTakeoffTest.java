package tankyard.catalogdemo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.Catalogs;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Status;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.takeoff.Share;
import tankyard.engine.takeoff.Takeoff;
import tankyard.engine.takeoff.TakeoffKind;
import tankyard.engine.takeoff.TakeoffLine;

/** Rules of the takeoff that want steel, several sizes, a pump or an overflow. */
class DemoTakeoffTest {
  private static final double METRES = 100;

  private final Catalog catalog = Catalogs.find().catalog();
  private final Lease lease = read();

  private static Lease read() {
    try (InputStream in = Catalogs.find().demoLease().orElseThrow()) {
      return LeaseFiles.read("demo.lease.json", in);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void aSquareCornerIsAnElbowOnSteelAndNoneOnPoly() {
    assertThat(withCorner("IN1", 3720, 1440) - count(lease, "elbow-90-steel-2", "IN1"))
        .isEqualTo(1);
    Lease poly = lease.with(cornered("FL12", 2130, 1560));
    assertThat(count(poly, "elbow-90-poly-2", "FL12")).isZero();
  }

  @Test
  void aSlightBendTakesNoElbow() {
    assertThat(withCorner("IN1", 3590, 1740)).isZero();
  }

  private double withCorner(String id, double east, double north) {
    return count(lease.with(cornered(id, east, north)), "elbow-90-steel-2", id);
  }

  private Line cornered(String id, double east, double north) {
    List<RoutePoint> corner = List.of(RoutePoint.at(MapPoint.ofFeet(east, north)));
    return lease.line(id).orElseThrow().withRoute(corner);
  }

  @Test
  void smallerSidesOfATeeTakeASwageAndAFourthSideASecondTee() {
    assertThat(count(lease, "swage-steel-3", "T1")).isEqualTo(3);
    assertThat(count(lease, "tee-poly-3", "T1")).isEqualTo(2);
    assertThat(count(lease, "ball-3", "T1")).isEqualTo(1);
    assertThat(count(lease, "ball-2", "T1")).isEqualTo(3);
  }

  @Test
  void theInjectionSideHasForgedValves() {
    assertThat(count(lease, "ball-hp-2", "P1")).isEqualTo(1);
    assertThat(count(lease, "ball-hp-2", "IW1")).isEqualTo(1);
    assertThat(count(lease, "relief-hp-2", "P1")).isEqualTo(1);
    assertThat(count(lease, "strainer-steel-3", "P1")).isEqualTo(1);
  }

  @Test
  void anOverflowHasNoValve() {
    assertThat(takeoff(lease).stream().filter(l -> l.kind() == TakeoffKind.VALVES))
        .noneMatch(l -> l.causes().contains("OV1"));
  }

  @Test
  void onlyWhatStandsInsideTheBermIsChargedWithIt() {
    assertThat(
            takeoff(lease).stream()
                .filter(l -> l.kind() == TakeoffKind.PAD_AND_BERM)
                .flatMap(l -> l.shares().stream())
                .map(Share::causes)
                .distinct())
        .containsExactly(List.of("BM1", "OT1", "OT2", "S1"), List.of("BM2", "WT1"));
  }

  @Test
  void theOldTankIsOnlyTheWorkOfTakingItOut() {
    assertThat(takeoff(lease).stream().filter(l -> l.causes().contains("OLD")))
        .singleElement()
        .satisfies(
            l -> {
              assertThat(l.item()).contains("take-out-tank");
              assertThat(l.status()).isEqualTo(Status.REMOVE);
            });
  }

  private List<TakeoffLine> takeoff(Lease of) {
    return Takeoff.of(of, catalog, line -> METRES);
  }

  /** How many of an item are charged to a thing or line. */
  private double count(Lease of, String item, String owner) {
    return takeoff(of).stream()
        .filter(l -> l.item().equals(Optional.of(item)))
        .flatMap(l -> l.shares().stream())
        .filter(s -> s.owner().equals(owner))
        .mapToDouble(Share::quantity)
        .sum();
  }
}
