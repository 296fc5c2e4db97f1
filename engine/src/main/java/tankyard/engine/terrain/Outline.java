package tankyard.engine.terrain;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;

/**
 * Corners on the map, in metres: the ground inside a berm, a creek, a house, or a single spot. The
 * JTS library does the geometry.
 */
public final class Outline {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** Straight stretches for a quarter of a circle round a corner. */
  private static final int STRETCHES = 12;

  private final Geometry shape;
  private final boolean crossed;

  private Outline(Geometry drawn) {
    crossed = drawn instanceof Polygon && !drawn.isValid();
    shape = crossed ? mended((Polygon) drawn) : drawn;
  }

  /** The ground that sides which cross close round; the sides alone where that is none. */
  private static Geometry mended(Polygon drawn) {
    Geometry ground = GeometryFixer.fix(drawn);
    return ground.isEmpty() ? drawn.getExteriorRing() : ground;
  }

  /**
   * Of one or more corners, as many east as north.
   *
   * @param closes whether a side runs from the last back to the first; needs three corners
   */
  public static Outline of(double[] eastM, double[] northM, boolean closes) {
    Coordinate[] corners =
        IntStream.range(0, eastM.length)
            .mapToObj(i -> new Coordinate(eastM[i], northM[i]))
            .toArray(Coordinate[]::new);
    if (corners.length == 1) {
      return new Outline(FACTORY.createPoint(corners[0]));
    }
    if (!closes) {
      return new Outline(FACTORY.createLineString(corners));
    }
    Coordinate[] ring = Arrays.copyOf(corners, corners.length + 1);
    ring[corners.length] = corners[0];
    return new Outline(FACTORY.createPolygon(ring));
  }

  /** Of the ground inside; 0 where it does not close. */
  public double areaM2() {
    return shape.getArea();
  }

  /** All its sides. */
  public double lengthM() {
    return shape.getLength();
  }

  /** Whether its sides cross each other, so that nobody can say what lies inside. */
  public boolean crossesItself() {
    return crossed;
  }

  /** Whether a place lies inside or on a side; a way and a spot hold nothing else. */
  public boolean holds(double eastM, double northM) {
    return shape.covers(FACTORY.createPoint(new Coordinate(eastM, northM)));
  }

  /** To the nearest of its sides, or of the ground it closes round: 0 inside. */
  public double metresTo(double eastM, double northM) {
    return shape.distance(FACTORY.createPoint(new Coordinate(eastM, northM)));
  }

  /**
   * The rings round all that lies within a distance of it, corner by corner as east and north; a
   * way that runs round something has one inside too.
   *
   * @param metres above zero
   */
  public List<List<double[]>> within(double metres) {
    Geometry around = shape.buffer(metres, STRETCHES);
    return IntStream.range(0, around.getNumGeometries())
        .mapToObj(around::getGeometryN)
        .filter(part -> part instanceof Polygon && !part.isEmpty())
        .flatMap(part -> rings((Polygon) part))
        .toList();
  }

  private static Stream<List<double[]>> rings(Polygon polygon) {
    return Stream.concat(
            Stream.of(polygon.getExteriorRing()),
            IntStream.range(0, polygon.getNumInteriorRing()).mapToObj(polygon::getInteriorRingN))
        .map(Outline::corners);
  }

  private static List<double[]> corners(LinearRing ring) {
    return Arrays.stream(ring.getCoordinates()).map(c -> new double[] {c.x, c.y}).toList();
  }
}
