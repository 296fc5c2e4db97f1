package tankyard.engine.terrain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;
import org.locationtech.jts.triangulate.quadedge.QuadEdge;
import org.locationtech.jts.triangulate.quadedge.QuadEdgeSubdivision;
import org.locationtech.jts.triangulate.quadedge.Vertex;

/** Flat triangles between known heights, and the straight edges between them. */
final class Triangles {
  private static final double TOUCH = 1e-9;

  private final List<Spot> spots;
  private final STRtree edges = new STRtree();
  private final List<LineSegment> allEdges = new ArrayList<>();
  private final STRtree facetTree = new STRtree();
  private final List<Coordinate[]> facets = new ArrayList<>();

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
    Map<Coordinate, Double> heights = new HashMap<>();
    List<Coordinate> sites = new ArrayList<>();
    for (Spot spot : spots) {
      Coordinate site = new Coordinate(spot.eastM(), spot.northM());
      heights.put(site, spot.groundM());
      sites.add(site);
    }
    DelaunayTriangulationBuilder builder = new DelaunayTriangulationBuilder();
    builder.setSites(sites);
    QuadEdgeSubdivision subdivision = builder.getSubdivision();
    for (Object found : subdivision.getPrimaryEdges(false)) {
      QuadEdge edge = (QuadEdge) found;
      LineSegment segment =
          new LineSegment(lifted(edge.orig(), heights), lifted(edge.dest(), heights));
      allEdges.add(segment);
      edges.insert(new Envelope(segment.p0, segment.p1), segment);
    }
    for (Object found : subdivision.getTriangleVertices(false)) {
      Vertex[] corners = (Vertex[]) found;
      Coordinate[] facet = {
        lifted(corners[0], heights), lifted(corners[1], heights), lifted(corners[2], heights)
      };
      facets.add(facet);
      facetTree.insert(
          new GeometryFactory().createMultiPointFromCoords(facet).getEnvelopeInternal(), facet);
    }
    edges.build();
    facetTree.build();
  }

  private static Coordinate lifted(Vertex vertex, Map<Coordinate, Double> heights) {
    Coordinate at = new Coordinate(vertex.getX(), vertex.getY());
    return new Coordinate(at.x, at.y, heights.get(at));
  }

  List<List<Spot>> facets() {
    return facets.stream().map(f -> List.of(spot(f[0]), spot(f[1]), spot(f[2]))).toList();
  }

  private static Spot spot(Coordinate c) {
    return new Spot(c.x, c.y, c.getZ());
  }

  OptionalDouble heightAt(double eastM, double northM) {
    if (spots.isEmpty()) {
      return OptionalDouble.empty();
    }
    if (spots.size() == 1) {
      return OptionalDouble.of(spots.get(0).groundM());
    }
    Coordinate at = new Coordinate(eastM, northM);
    for (Object found : facetTree.query(new Envelope(at))) {
      OptionalDouble height = onFacet((Coordinate[]) found, at);
      if (height.isPresent()) {
        return height;
      }
    }
    return OptionalDouble.of(onNearestEdge(at));
  }

  private static OptionalDouble onFacet(Coordinate[] f, Coordinate at) {
    double area = (f[1].x - f[0].x) * (f[2].y - f[0].y) - (f[2].x - f[0].x) * (f[1].y - f[0].y);
    if (area == 0) {
      return OptionalDouble.empty();
    }
    double b = ((at.x - f[0].x) * (f[2].y - f[0].y) - (f[2].x - f[0].x) * (at.y - f[0].y)) / area;
    double c = ((f[1].x - f[0].x) * (at.y - f[0].y) - (at.x - f[0].x) * (f[1].y - f[0].y)) / area;
    boolean inside = b >= -TOUCH && c >= -TOUCH && b + c <= 1 + TOUCH;
    return inside
        ? OptionalDouble.of((1 - b - c) * f[0].getZ() + b * f[1].getZ() + c * f[2].getZ())
        : OptionalDouble.empty();
  }

  private double onNearestEdge(Coordinate at) {
    LineSegment nearest = allEdges.get(0);
    for (LineSegment edge : allEdges) {
      if (edge.distance(at) < nearest.distance(at)) {
        nearest = edge;
      }
    }
    double share = Math.max(0, Math.min(1, nearest.projectionFactor(at)));
    return nearest.p0.getZ() + share * (nearest.p1.getZ() - nearest.p0.getZ());
  }

  /** Where a straight stretch crosses the edges. */
  List<Coordinate> crossings(Coordinate a, Coordinate b, Envelope box) {
    List<Coordinate> found = new ArrayList<>();
    for (Object candidate : edges.query(box)) {
      LineSegment edge = (LineSegment) candidate;
      RobustLineIntersector intersector = new RobustLineIntersector();
      intersector.computeIntersection(a, b, edge.p0, edge.p1);
      for (int i = 0; i < intersector.getIntersectionNum(); i++) {
        found.add(intersector.getIntersection(i));
      }
    }
    return found;
  }
}
