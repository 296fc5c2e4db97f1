package tankyard.app.map.plan;

/**
 * Which part of the map is on the screen: the spot in the middle, the scale and the size of the
 * drawing area. Screen x runs right and y down; the map runs east and north. North is always up.
 *
 * @param pxPerM screen pixels for a metre on the ground
 */
public record Camera(MapSpot centre, double pxPerM, double widthPx, double heightPx) {
  private static final double LEAST_PX_PER_M = 0.01;
  private static final double MOST_PX_PER_M = 200;

  public Camera {
    pxPerM = Math.max(LEAST_PX_PER_M, Math.min(MOST_PX_PER_M, pxPerM));
  }

  public static Camera start() {
    return new Camera(new MapSpot(0, 0), 1, 800, 600);
  }

  public double x(double eastM) {
    return widthPx / 2 + (eastM - centre.eastM()) * pxPerM;
  }

  public double y(double northM) {
    return heightPx / 2 - (northM - centre.northM()) * pxPerM;
  }

  public double x(MapSpot spot) {
    return x(spot.eastM());
  }

  public double y(MapSpot spot) {
    return y(spot.northM());
  }

  public MapSpot spot(double x, double y) {
    return new MapSpot(
        centre.eastM() + (x - widthPx / 2) / pxPerM, centre.northM() - (y - heightPx / 2) / pxPerM);
  }

  public double px(double metres) {
    return metres * pxPerM;
  }

  public double metres(double px) {
    return px / pxPerM;
  }

  public Camera resized(double width, double height) {
    return new Camera(centre, pxPerM, width, height);
  }

  /** The map dragged along by so many pixels. */
  public Camera panned(double dx, double dy) {
    return new Camera(centre.plus(-dx / pxPerM, dy / pxPerM), pxPerM, widthPx, heightPx);
  }

  public Camera centredOn(MapSpot spot) {
    return new Camera(spot, pxPerM, widthPx, heightPx);
  }

  /** Zoomed so that the spot under the point on the screen stays under it. */
  public Camera zoomedAt(double x, double y, double factor) {
    MapSpot held = spot(x, y);
    Camera zoomed = new Camera(centre, pxPerM * factor, widthPx, heightPx);
    MapSpot slid = zoomed.spot(x, y);
    return zoomed.centredOn(
        centre.plus(held.eastM() - slid.eastM(), held.northM() - slid.northM()));
  }

  /** The whole box in view with a margin on every side. */
  public Camera fitted(MapBox box, double marginPx) {
    return fitted(box, marginPx, 0);
  }

  /** The same with so many more pixels kept free at the left. */
  public Camera fitted(MapBox box, double marginPx, double leftPx) {
    double across = Math.max(20, widthPx - leftPx - 2 * marginPx) / Math.max(box.widthM(), 1);
    double up = Math.max(20, heightPx - 2 * marginPx) / Math.max(box.heightM(), 1);
    return new Camera(box.centre(), Math.min(across, up), widthPx, heightPx).panned(leftPx / 2, 0);
  }

  public MapBox view() {
    return MapBox.between(spot(0, 0), spot(widthPx, heightPx));
  }

  public boolean shows(MapSpot spot, double marginPx) {
    double x = x(spot);
    double y = y(spot);
    return x >= marginPx && y >= marginPx && x <= widthPx - marginPx && y <= heightPx - marginPx;
  }
}
