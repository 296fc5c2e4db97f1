package tankyard.engine.terrain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;
import org.locationtech.jts.triangulate.quadedge.QuadEdge;
import org.locationtech.jts.triangulate.quadedge.QuadEdgeSubdivision;
import org.locationtech.jts.triangulate.quadedge.Vertex;

/**
 * Flat triangles between known heights, and the straight edges between them. All are looked at for
 * every place: a lease has dozens of heights, and up to thousands a tree of boxes costs more than
 * it saves.
 */
final class Triangles {
  private final List<Spot> spots;
  private final List<Edge> edges = new ArrayList<>();
  private final List<Facet> facets = new ArrayList<>();

  private Triangles(List<Spot> spots) {
    this.spots = spots;
  }

  static Triangles of(List<Spot> spots) {
    Triangles triangles = new Triangles(spots);
    if (spots.size() > 1) {
      triangles.triangulate();
    }
    return triangles;
  }

  private void triangulate() {
    Map<Coordinate, Spot> sites = new HashMap<>();
    spots.forEach(spot -> sites.put(new Coordinate(spot.eastM(), spot.northM()), spot));
    DelaunayTriangulationBuilder builder = new DelaunayTriangulationBuilder();
    builder.setSites(sites.keySet());
    QuadEdgeSubdivision subdivision = builder.getSubdivision();
    for (Object found : subdivision.getPrimaryEdges(false)) {
      QuadEdge edge = (QuadEdge) found;
      edges.add(new Edge(spot(edge.orig(), sites), spot(edge.dest(), sites)));
    }
    for (Object found : subdivision.getTriangleVertices(false)) {
      Vertex[] corners = (Vertex[]) found;
      facets.add(
          new Facet(spot(corners[0], sites), spot(corners[1], sites), spot(corners[2], sites)));
    }
  }

  private static Spot spot(Vertex corner, Map<Coordinate, Spot> sites) {
    return sites.get(new Coordinate(corner.getX(), corner.getY()));
  }

  List<List<Spot>> facets() {
    return facets.stream().map(Facet::corners).toList();
  }

  OptionalDouble heightAt(double eastM, double northM) {
    if (spots.isEmpty()) {
      return OptionalDouble.empty();
    }
    if (spots.size() == 1) {
      return OptionalDouble.of(spots.get(0).groundM());
    }
    for (Facet facet : facets) {
      OptionalDouble height = facet.heightAt(eastM, northM);
      if (height.isPresent()) {
        return height;
      }
    }
    return OptionalDouble.of(nearestEdge(eastM, northM).heightNearest(eastM, northM));
  }

  private Edge nearestEdge(double eastM, double northM) {
    Edge nearest = edges.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (Edge edge : edges) {
      double distance2 = edge.distance2(eastM, northM);
      if (distance2 < least) {
        nearest = edge;
        least = distance2;
      }
    }
    return nearest;
  }

  /** Where a stretch crosses edges; the ends of one it runs along are known heights. */
  List<Edge.Crossing> crossings(RouteSpot from, RouteSpot to) {
    List<Edge.Crossing> found = new ArrayList<>();
    for (Edge edge : edges) {
      edge.crossing(from, to).ifPresent(found::add);
    }
    return found;
  }
}
