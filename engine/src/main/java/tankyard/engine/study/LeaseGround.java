package tankyard.engine.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.SpotHeight;
import tankyard.engine.lease.Thing;
import tankyard.engine.terrain.Ground;
import tankyard.engine.terrain.Spot;
import tankyard.engine.units.Elevation;

/**
 * The ground of a lease. Every height anybody typed helps: under things, at pegs along routes and
 * anywhere on the map. Where none is known the ground is taken to lie at the datum, and said so.
 */
public final class LeaseGround {
  private final Ground ground;
  private final Map<MapPoint, Double> found = new ConcurrentHashMap<>();

  private LeaseGround(Ground ground) {
    this.ground = ground;
  }

  public static LeaseGround of(Lease lease) {
    List<Spot> spots = new ArrayList<>();
    lease.things().flatMap(LeaseGround::shot).forEach(spots::add);
    lease.lines().stream()
        .flatMap(l -> l.route().stream())
        .flatMap(p -> spot(p.at(), p.ground()))
        .forEach(spots::add);
    for (SpotHeight height : lease.spotHeights()) {
      spot(height.at(), Optional.of(height.ground())).forEach(spots::add);
    }
    return new LeaseGround(Ground.of(spots));
  }

  private static Stream<Spot> shot(Thing thing) {
    return spot(thing.at(), thing.ground());
  }

  private static Stream<Spot> spot(MapPoint at, Optional<Elevation> ground) {
    return ground.stream().map(g -> new Spot(at.east().metres(), at.north().metres(), g.metres()));
  }

  public Ground surface() {
    return ground;
  }

  /** Elevation of the ground at a place, in metres; empty where no height is known at all. */
  public OptionalDouble metresAt(MapPoint place) {
    return ground.heightAt(place.east().metres(), place.north().metres());
  }

  /** Elevation of the ground a thing stands on, in metres. */
  public double metresUnder(Thing thing) {
    return thing.ground().map(Elevation::metres).orElseGet(() -> found(thing.at()));
  }

  /** Of a place that is asked for in every case. */
  private double found(MapPoint place) {
    return found.computeIfAbsent(place, at -> metresAt(at).orElse(0));
  }
}
