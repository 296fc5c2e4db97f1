package tankyard.app.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.terrain.Ground;
import tankyard.engine.terrain.Spot;
import tankyard.engine.units.Elevation;

/** Stands in until the study's own is there. */
record LeaseGround(Ground surface) {
  static LeaseGround of(Lease lease) {
    List<Spot> spots = new ArrayList<>();
    lease.things().forEach(t -> add(spots, t.at(), t.ground()));
    lease.lines().forEach(l -> l.route().forEach(p -> add(spots, p.at(), p.ground())));
    lease.spotHeights().forEach(s -> add(spots, s.at(), Optional.of(s.ground())));
    return new LeaseGround(Ground.of(spots));
  }

  private static void add(List<Spot> spots, MapPoint at, Optional<Elevation> ground) {
    ground.ifPresent(g -> spots.add(new Spot(at.east().metres(), at.north().metres(), g.metres())));
  }
}
