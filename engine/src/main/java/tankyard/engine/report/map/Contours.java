package tankyard.engine.report.map;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import tankyard.engine.terrain.Spot;

/**
 * Lines of one height, and the ground above that height, cut out of flat triangles. In metres.
 *
 * @param facets three corners each
 * @param outskirts triangles around them, where the ground goes on level
 */
record Contours(List<List<Spot>> facets, List<List<Spot>> outskirts) {
  private static final GeometryFactory SHAPES = new GeometryFactory();

  static Contours of(List<List<Spot>> facets) {
    return new Contours(facets, Outskirts.of(facets));
  }

  double lowest() {
    return facets.stream().flatMap(List::stream).mapToDouble(Spot::groundM).min().orElse(0);
  }

  double highest() {
    return facets.stream().flatMap(List::stream).mapToDouble(Spot::groundM).max().orElse(0);
  }

  /** Where the ground stands at this height. */
  List<LineString> at(double heightM) {
    LineMerger merger = new LineMerger();
    for (List<Spot> facet : facets) {
      List<Coordinate> ends = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        Spot a = facet.get(i);
        Spot b = facet.get((i + 1) % 3);
        if (a.groundM() < heightM != b.groundM() < heightM) {
          ends.add(between(a, b, heightM));
        }
      }
      if (ends.size() == 2 && ends.get(0).distance(ends.get(1)) > 1e-6) {
        merger.add(SHAPES.createLineString(ends.toArray(Coordinate[]::new)));
      }
    }
    List<LineString> lines = new ArrayList<>();
    for (Object line : (Collection<?>) merger.getMergedLineStrings()) {
      lines.add((LineString) line);
    }
    return lines;
  }

  /** The ground that stands above this height, outskirts and all. */
  Geometry above(double heightM) {
    List<List<Spot>> all = new ArrayList<>(facets);
    all.addAll(outskirts);
    return above(heightM, all);
  }

  /** The ground inside the outline of the known heights. */
  Geometry known() {
    return above(lowest() - 1, facets);
  }

  private static Geometry above(double heightM, List<List<Spot>> facets) {
    List<Geometry> parts = new ArrayList<>();
    for (List<Spot> facet : facets) {
      List<Coordinate> ring = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        Spot a = facet.get(i);
        Spot b = facet.get((i + 1) % 3);
        if (a.groundM() >= heightM) {
          ring.add(new Coordinate(a.eastM(), a.northM()));
        }
        if (a.groundM() < heightM != b.groundM() < heightM) {
          ring.add(between(a, b, heightM));
        }
      }
      if (ring.size() >= 3) {
        ring.add(new Coordinate(ring.get(0)));
        parts.add(SHAPES.createPolygon(ring.toArray(Coordinate[]::new)));
      }
    }
    return parts.isEmpty() ? SHAPES.createEmpty(2) : OverlayNGRobust.union(parts);
  }

  /** The same point from either side, so that pieces of neighbouring triangles meet. */
  private static Coordinate between(Spot a, Spot b, double heightM) {
    boolean swap = a.groundM() > b.groundM();
    Spot low = swap ? b : a;
    Spot high = swap ? a : b;
    double share = (heightM - low.groundM()) / (high.groundM() - low.groundM());
    return new Coordinate(
        low.eastM() + share * (high.eastM() - low.eastM()),
        low.northM() + share * (high.northM() - low.northM()));
  }
}
