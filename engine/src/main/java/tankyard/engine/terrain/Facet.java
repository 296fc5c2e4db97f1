package tankyard.engine.terrain;

import java.util.List;
import java.util.OptionalDouble;

/** A flat triangle between three known heights, with what its plane needs worked out once. */
final class Facet {
  /** A place this share of the triangle outside of it still lies on its edge. */
  private static final double TOUCH = 1e-9;

  private final Spot a;
  private final Spot b;
  private final Spot c;

  /** Twice the area, negative where the corners turn the other way; zero of corners in a row. */
  private final double area;

  /** What a metre east and north adds to the shares of the second and third corner. */
  private final double bEast;

  private final double bNorth;
  private final double cEast;
  private final double cNorth;

  Facet(Spot a, Spot b, Spot c) {
    this.a = a;
    this.b = b;
    this.c = c;
    double toBEast = b.eastM() - a.eastM();
    double toBNorth = b.northM() - a.northM();
    double toCEast = c.eastM() - a.eastM();
    double toCNorth = c.northM() - a.northM();
    area = toBEast * toCNorth - toCEast * toBNorth;
    bEast = toCNorth / area;
    bNorth = -toCEast / area;
    cEast = -toBNorth / area;
    cNorth = toBEast / area;
  }

  List<Spot> corners() {
    return List.of(a, b, c);
  }

  /** Elevation at a place, in metres; empty beside the triangle. */
  OptionalDouble heightAt(double eastM, double northM) {
    double east = eastM - a.eastM();
    double north = northM - a.northM();
    double toB = east * bEast + north * bNorth;
    double toC = east * cEast + north * cNorth;
    boolean inside = area != 0 && toB >= -TOUCH && toC >= -TOUCH && toB + toC <= 1 + TOUCH;
    return inside
        ? OptionalDouble.of((1 - toB - toC) * a.groundM() + toB * b.groundM() + toC * c.groundM())
        : OptionalDouble.empty();
  }
}
