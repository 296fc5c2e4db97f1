package tankyard.app.map.tools;

import java.util.Optional;
import tankyard.app.edit.Blanks;
import tankyard.app.edit.Hand;
import tankyard.app.edit.LeaseStore;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ViewSettings;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.PlanMaker;
import tankyard.engine.lease.Lease;
import tankyard.engine.units.UnitSystem;

/** A map for tests of its tools: drawn anew at every edit, its middle 500 ft east and 350 north. */
final class DrawnMap {
  static final double FOOT = 0.3048;
  final LeaseStore store;
  final Selection selection;
  final Hand hand = new Hand();
  final MapDesk desk;

  DrawnMap(Lease lease) {
    store = new LeaseStore(lease);
    selection = new Selection(store);
    desk = new MapDesk(store, selection, new ViewSettings(store), hand, new Blanks("some-pipe"));
    desk.cameraProperty().set(new Camera(new MapSpot(500 * FOOT, 350 * FOOT), 3.5, 1200, 900));
    store.leaseProperty().addListener((o, a, b) -> plan());
    plan();
  }

  private void plan() {
    desk.planProperty()
        .set(PlanMaker.of(store.lease(), Optional.empty(), "summer", UnitSystem.FIELD));
  }
}
