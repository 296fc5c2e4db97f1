package tankyard.engine.report.map;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Thing;
import tankyard.engine.study.LeaseGround;
import tankyard.engine.terrain.Spot;
import tankyard.engine.units.UnitSystem;

/** The ground of a lease as contours, or as single heights where too few are known. */
final class Ground {
  private final Optional<GroundLayer> layer;
  private final SpotLayer spots;
  private final boolean anySpots;

  private Ground(Optional<GroundLayer> layer, SpotLayer spots, boolean anySpots) {
    this.layer = layer;
    this.spots = spots;
    this.anySpots = anySpots;
  }

  static Ground of(Lease lease, Frame frame, Palette palette, UnitSystem units) {
    tankyard.engine.terrain.Ground surface = LeaseGround.of(lease).surface();
    Optional<GroundLayer> layer =
        surface.facets().isEmpty()
            ? Optional.empty()
            : Optional.of(new GroundLayer(Contours.of(surface.facets()), palette, units))
                .filter(l -> l.covers(frame));
    List<Rectangle2D> things = Extent.standing(lease).stream().map(Ground::place).toList();
    List<Spot> beside =
        layer.isPresent()
            ? List.of()
            : surface.spots().stream()
                .filter(s -> things.stream().noneMatch(t -> t.contains(s.eastM(), s.northM())))
                .toList();
    return new Ground(layer, new SpotLayer(beside, palette, units), !beside.isEmpty());
  }

  /** Under a thing stands its symbol. */
  private static Rectangle2D place(Thing thing) {
    double east = thing.at().east().metres();
    double north = thing.at().north().metres();
    return new Rectangle2D.Double(east - 1, north - 1, 2, 2);
  }

  void paint(Graphics2D g, Frame frame, Labels labels) {
    layer.ifPresent(l -> l.paint(g, frame, labels));
  }

  void paintSpots(Graphics2D g, Frame frame) {
    spots.paint(g, frame);
  }

  void nameSpots(Graphics2D g, Frame frame, Labels labels) {
    spots.name(g, frame, labels);
  }

  boolean hasHeights() {
    return layer.isPresent() || anySpots;
  }

  /** What the legend says of contours; empty where none are drawn. */
  Optional<String> contours() {
    return layer.map(GroundLayer::words);
  }

  /** Whether single heights are drawn. */
  boolean crosses() {
    return anySpots;
  }
}
