package tankyard.engine.vessels;

/**
 * The end of a vessel. All but the flat one are solids of revolution about the vessel's axis.
 * Published part-full formulas are used where there are any (D. Jones, Computing Fluid Tank
 * Volumes); the torispherical head is integrated.
 */
public sealed interface Head permits FlatHead, EllipsoidalHead, ConicalHead, TorisphericalHead {

  /** Two to one: depth a quarter of the diameter. */
  static Head twoToOne(double radiusM) {
    return new EllipsoidalHead(radiusM, radiusM / 2);
  }

  static Head hemispherical(double radiusM) {
    return new EllipsoidalHead(radiusM, radiusM);
  }

  /** How far it reaches beyond the seam. */
  double depthM();

  /** What one head holds in a lying vessel with liquid to a height above the bottom, 0 to 2 R. */
  double lyingM3(double heightM);

  /**
   * What it holds as the bottom of a standing vessel, liquid to a height above its lowest point.
   */
  double standingM3(double heightM);

  /** What it holds full. */
  default double fullM3() {
    return standingM3(depthM());
  }

  /** For drop-down lists and workings. */
  String words();
}
