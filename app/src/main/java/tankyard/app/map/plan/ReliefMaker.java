package tankyard.app.map.plan;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.linemerge.LineMerger;
import tankyard.engine.terrain.Spot;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Unit;

/**
 * Cuts the triangles of the ground at round heights. The ground is flat between known heights, so
 * straight cuts are exact: the map shows what the study works with and nothing smoother.
 */
public final class ReliefMaker {
  private static final int ABOUT_LEVELS = 12;
  private static final int HEAVY_EVERY = 5;
  private static final double[] STEPS = {0.5, 1, 2, 5, 10, 20, 50, 100, 200};
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private final List<List<Spot>> facets;
  private final Unit unit;
  private final double lowestM;
  private final double highestM;

  private ReliefMaker(List<List<Spot>> facets, Unit unit) {
    this.facets = facets;
    this.unit = unit;
    lowestM = facets.stream().flatMap(List::stream).mapToDouble(Spot::groundM).min().orElse(0);
    highestM = facets.stream().flatMap(List::stream).mapToDouble(Spot::groundM).max().orElse(0);
  }

  /**
   * The relief of a ground.
   *
   * @param facets flat triangles of three corners each
   * @param unit of elevation in which the contours are round
   */
  public static Relief of(List<List<Spot>> facets, Unit unit) {
    return facets.isEmpty() ? Relief.flat() : new ReliefMaker(facets, unit).make();
  }

  private Relief make() {
    List<Relief.Terrace> terraces = new ArrayList<>();
    List<ContourLine> contours = new ArrayList<>();
    terraces.add(new Relief.Terrace(0, above(Double.NEGATIVE_INFINITY)));
    double step = step();
    double first = Math.ceil(unit.fromSi(lowestM) / step + 1e-9);
    double last = Math.floor(unit.fromSi(highestM) / step);
    for (double n = first; n <= last; n++) {
      double levelM = unit.toSi(n * step);
      terraces.add(new Relief.Terrace((levelM - lowestM) / (highestM - lowestM), above(levelM)));
      String words = Figures.exact(n * step) + " " + unit.symbol();
      contours.addAll(contours(levelM, words, n % HEAVY_EVERY == 0));
    }
    return new Relief(terraces, contours);
  }

  private double step() {
    double range = unit.fromSi(highestM) - unit.fromSi(lowestM);
    for (double step : STEPS) {
      if (range / step <= ABOUT_LEVELS) {
        return step;
      }
    }
    return STEPS[STEPS.length - 1];
  }

  private List<List<MapSpot>> above(double levelM) {
    List<List<MapSpot>> faces = new ArrayList<>();
    for (List<Spot> facet : facets) {
      List<MapSpot> face = new ArrayList<>();
      for (int i = 0; i < facet.size(); i++) {
        Spot a = facet.get(i);
        Spot b = facet.get((i + 1) % facet.size());
        if (a.groundM() >= levelM) {
          face.add(new MapSpot(a.eastM(), a.northM()));
        }
        if (a.groundM() >= levelM != b.groundM() >= levelM) {
          face.add(cut(a, b, levelM));
        }
      }
      if (face.size() > 2) {
        faces.add(face);
      }
    }
    return faces;
  }

  private List<ContourLine> contours(double levelM, String words, boolean heavy) {
    LineMerger merger = new LineMerger();
    for (List<Spot> facet : facets) {
      List<Coordinate> ends = new ArrayList<>();
      for (int i = 0; i < facet.size(); i++) {
        Spot a = facet.get(i);
        Spot b = facet.get((i + 1) % facet.size());
        if (a.groundM() >= levelM != b.groundM() >= levelM) {
          MapSpot cut = cut(a, b, levelM);
          ends.add(new Coordinate(cut.eastM(), cut.northM()));
        }
      }
      if (ends.size() == 2 && !ends.get(0).equals2D(ends.get(1))) {
        merger.add(GEOMETRY.createLineString(ends.toArray(Coordinate[]::new)));
      }
    }
    List<ContourLine> lines = new ArrayList<>();
    for (Object merged : merger.getMergedLineStrings()) {
      List<MapSpot> spots = new ArrayList<>();
      for (Coordinate c : ((LineString) merged).getCoordinates()) {
        spots.add(new MapSpot(c.x, c.y));
      }
      lines.add(new ContourLine(words, heavy, spots));
    }
    return lines;
  }

  /** Where an edge passes a height; the same to the last bit from either side of the edge. */
  private static MapSpot cut(Spot a, Spot b, double levelM) {
    boolean swap = a.groundM() > b.groundM();
    Spot low = swap ? b : a;
    Spot high = swap ? a : b;
    double share = (levelM - low.groundM()) / (high.groundM() - low.groundM());
    return new MapSpot(low.eastM(), low.northM())
        .towards(new MapSpot(high.eastM(), high.northM()), share);
  }
}
