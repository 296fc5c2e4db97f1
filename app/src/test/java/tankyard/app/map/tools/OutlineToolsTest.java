package tankyard.app.map.tools;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.app.edit.Hand;
import tankyard.app.edit.LeaseStore;
import tankyard.app.edit.NextCorner;
import tankyard.app.edit.RemoveCorner;
import tankyard.app.edit.Replace;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ThingKind;
import tankyard.app.example.SmallLease;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.Hit;
import tankyard.app.map.plan.MapSpot;
import tankyard.engine.lease.Landmark;
import tankyard.engine.lease.LandmarkBuilder;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.units.Length;

/** Berms and landmarks under the hand: set down, bent, shifted, taken back. */
class OutlineToolsTest {
  private static final double FOOT = DrawnMap.FOOT;
  private final Lease first = SmallLease.bare();
  private final DrawnMap map = new DrawnMap(first);
  private final LeaseStore store = map.store;
  private final Selection selection = map.selection;
  private final Hand hand = map.hand;
  private final MapDesk desk = map.desk;
  private final SelectTool select = new SelectTool(desk);

  private Pointer at(double eastFt, double northFt, int clicks) {
    Camera camera = desk.camera();
    return new Pointer(camera.x(eastFt * FOOT), camera.y(northFt * FOOT), false, false, clicks);
  }

  private void put(ThingKind kind, double eastFt, double northFt) {
    PlaceTool tool = new PlaceTool(desk, kind);
    tool.press(at(eastFt, northFt, 1));
    tool.release(at(eastFt, northFt, 1));
  }

  private void drag(double fromEast, double fromNorth, double toEast, double toNorth) {
    select.press(at(fromEast, fromNorth, 1));
    select.drag(at((fromEast + toEast) / 2, (fromNorth + toNorth) / 2, 1));
    select.drag(at(toEast, toNorth, 1));
    select.release(at(toEast, toNorth, 1));
  }

  private void assertCorner(int index, double eastFt, double northFt) {
    MapPoint corner = store.lease().outlines().findFirst().orElseThrow().corners().get(index);
    assertThat(corner.east().toFeet()).isCloseTo(eastFt, within(1e-6));
    assertThat(corner.north().toFeet()).isCloseTo(northFt, within(1e-6));
  }

  @Test
  void aBermIsSetDownAsARectangleAndPicked() {
    put(ThingKind.BERM, 500, 350);
    assertCorner(0, 470, 330);
    assertCorner(2, 530, 370);
    assertThat(selection.single()).contains("BM1");
  }

  @Test
  void itsCornersAreDraggedOneByOneInOneStepEach() {
    put(ThingKind.BERM, 500, 350);
    drag(530, 370, 600, 420);
    assertCorner(2, 600, 420);
    assertCorner(1, 530, 330);
    store.undo();
    assertCorner(2, 530, 370);
  }

  @Test
  void aDoubleClickOnASideBendsItThereAndTheDragGoesOn() {
    put(ThingKind.BERM, 500, 350);
    select.press(at(530, 350, 1));
    select.release(at(530, 350, 1));
    select.press(at(530, 350, 2));
    select.drag(at(545, 350, 2));
    select.drag(at(560, 350, 2));
    select.release(at(560, 350, 2));
    assertThat(store.lease().berms().get(0).corners()).hasSize(5);
    assertCorner(2, 560, 350);
    assertCorner(3, 530, 370);
  }

  @Test
  void theLastSideRunsBackToTheFirstCorner() {
    put(ThingKind.BERM, 500, 350);
    selection.clear();
    Hit hit = desk.hits().at(at(470, 350, 1).x(), at(470, 350, 1).y(), List.of());
    assertThat(hit).isEqualTo(new Hit(Hit.What.OUTLINE, "BM1", 3));
    select.press(at(470, 350, 2));
    select.release(at(470, 350, 2));
    assertThat(store.lease().berms().get(0).corners()).hasSize(5);
    assertCorner(4, 470, 350);
  }

  @Test
  void aSideDragsTheWholeAndTheInsideDoesNot() {
    put(ThingKind.BERM, 500, 350);
    drag(500, 330, 600, 430);
    assertCorner(0, 570, 430);
    assertCorner(2, 630, 470);
    drag(600, 450, 500, 350);
    assertCorner(0, 570, 430);
  }

  @Test
  void aBermKeepsThreeCornersAndALandmarkOne() {
    put(ThingKind.BERM, 500, 350);
    desk.edit(new RemoveCorner("BM1", 3));
    assertThat(store.lease().berms().get(0).corners()).hasSize(3);
    assertThat(desk.edit(new RemoveCorner("BM1", 0))).isFalse();
    assertThat(desk.refusalProperty().get()).contains("Berm 1 needs 3 corners");
    assertThat(store.lease().berms().get(0).corners()).hasSize(3);
  }

  /** A creek: the second corner goes off to the east, the next goes on the way it came. */
  @Test
  void aWayGoesOnTheWayItCame() {
    put(ThingKind.LANDMARK, 400, 300);
    Landmark creek =
        LandmarkBuilder.builder(store.lease().landmarks().get(0)).what(Landmark.What.CREEK).build();
    desk.edit(Replace.of(creek, "what it is"));
    desk.edit(NextCorner.last(store.lease(), "LM1"));
    assertCorner(1, 450, 300);
    drag(450, 300, 400, 400);
    desk.edit(NextCorner.last(store.lease(), "LM1"));
    assertCorner(2, 400, 450);
    assertThat(desk.plan().outline("LM1").orElseThrow().closes()).isFalse();
  }

  /**
   * Straight on, the third corner of a house would close round no ground at all; once it is closed,
   * the next comes half way back to the first.
   */
  @Test
  void aHouseTurnsAtItsThirdCorner() {
    put(ThingKind.LANDMARK, 400, 300);
    desk.edit(NextCorner.last(store.lease(), "LM1"));
    desk.edit(NextCorner.last(store.lease(), "LM1"));
    assertCorner(1, 450, 300);
    assertCorner(2, 450, 350);
    desk.edit(NextCorner.last(store.lease(), "LM1"));
    assertCorner(3, 425, 325);
  }

  @Test
  void aSpotThatIsPickedHasNoCornerToDragOff() {
    put(ThingKind.LANDMARK, 400, 300);
    assertThat(selection.single()).contains("LM1");
    Pointer on = at(400, 300, 1);
    assertThat(desk.hits().at(on.x(), on.y(), List.of("LM1")).what()).isEqualTo(Hit.What.OUTLINE);
  }

  /** Nothing to draw is no reason to draw nothing. */
  @Test
  void aSetbackOfNothingHasNoRing() {
    put(ThingKind.LANDMARK, 400, 300);
    Landmark house =
        LandmarkBuilder.builder(store.lease().landmarks().get(0))
            .setback(Optional.of(Length.ofFeet(0)))
            .build();
    desk.edit(Replace.of(house, "setback"));
    assertThat(desk.plan().outline("LM1").orElseThrow().setback()).isEmpty();
  }

  @Test
  void aHouseCanBePickedDraggedAndKeepsItsSetback() {
    put(ThingKind.LANDMARK, 400, 300);
    selection.clear();
    drag(400, 300, 450, 300);
    assertCorner(0, 450, 300);
    Landmark house =
        LandmarkBuilder.builder(store.lease().landmarks().get(0))
            .setback(Optional.of(Length.ofFeet(200)))
            .build();
    desk.edit(Replace.of(house, "setback"));
    List<MapSpot> ring = desk.plan().outline("LM1").orElseThrow().setback().get(0);
    assertThat(ring)
        .allSatisfy(
            spot ->
                assertThat(spot.metresTo(new MapSpot(450 * FOOT, 300 * FOOT)))
                    .isCloseTo(200 * FOOT, within(0.01)));
  }

  @Test
  void noLineCanEndAtABerm() {
    put(ThingKind.BERM, 500, 350);
    put(ThingKind.WELL, 300, 300);
    LineTool line = new LineTool(desk);
    line.press(at(300, 300, 1));
    line.release(at(300, 300, 1));
    line.press(at(500, 330, 1));
    line.release(at(500, 330, 1));
    assertThat(store.lease().lines()).isEmpty();
  }
}
