package tankyard.app.map.plan;

import tankyard.app.edit.ThingKind;

/**
 * How large a thing comes out on the screen: to scale where that can be seen, else as large as its
 * symbol must be to be read.
 *
 * @param toScale whether this is its true outline
 */
public record SymbolSize(double widthPx, double heightPx, boolean toScale) {
  /** Below this many pixels to the metre a whole battery is a thumbnail and symbols shrink. */
  private static final double FAR_PX_PER_M = 0.5;

  private static final double SHRUNK = 0.7;

  public static SymbolSize of(PlanThing thing, Camera camera) {
    return of(thing.kind(), thing.lengthM(), thing.widthM(), camera);
  }

  public static SymbolSize of(ThingKind kind, double lengthM, double widthM, Camera camera) {
    double shrink = camera.pxPerM() < FAR_PX_PER_M ? SHRUNK : 1;
    double least = shrink * leastPx(kind);
    double width = camera.px(lengthM);
    double height = camera.px(widthM);
    if (Math.max(width, height) >= least) {
      return new SymbolSize(width, Math.max(height, least / 3), true);
    }
    double squat = kind == ThingKind.SEPARATOR ? 0.55 : 1;
    return new SymbolSize(least, least * squat, false);
  }

  private static double leastPx(ThingKind kind) {
    return switch (kind) {
      case WELL, POWER_POLE, LANDMARK -> 13;
      case TEE -> 9;
      case SEPARATOR -> 24;
      case GUN_BARREL, OIL_TANK, WATER_TANK, BERM -> 18;
      case INJECTION_PUMP, INJECTION_WELL -> 16;
    };
  }

  /** The same with a rim around it. */
  public SymbolSize wider(double px) {
    return new SymbolSize(widthPx + px, heightPx + px, toScale);
  }

  public double radius() {
    return Math.max(widthPx, heightPx) / 2;
  }
}
