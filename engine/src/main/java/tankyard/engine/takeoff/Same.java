package tankyard.engine.takeoff;

import tankyard.engine.units.Length;

/** Sizes that are the same to anyone with a tape. */
final class Same {
  private static final double TAPE_METRES = 0.01;

  private Same() {}

  static boolean length(Length a, Length b) {
    return Math.abs(a.metres() - b.metres()) < TAPE_METRES;
  }
}
