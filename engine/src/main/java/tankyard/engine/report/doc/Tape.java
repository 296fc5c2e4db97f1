package tankyard.engine.report.doc;

import tankyard.engine.units.Length;
import tankyard.engine.units.Rounding;

/** A height as a tape is read: feet, inches and quarters of an inch. */
final class Tape {
  private static final int QUARTERS_PER_FOOT = 48;

  private Tape() {}

  /** For example {@code 13 ft 10 1/4 in}. */
  static String words(Length height, Rounding rounding) {
    double exact = height.toFeet() * QUARTERS_PER_FOOT;
    long quarters = Math.round(rounding.round(exact, 0));
    long feet = Math.floorDiv(quarters, QUARTERS_PER_FOOT);
    long rest = Math.floorMod(quarters, QUARTERS_PER_FOOT);
    String inches = rest / 4 == 0 && rest % 4 != 0 ? "" : String.valueOf(rest / 4);
    String part =
        switch ((int) (rest % 4)) {
          case 1 -> "1/4";
          case 2 -> "1/2";
          case 3 -> "3/4";
          default -> "";
        };
    String gap = inches.isEmpty() || part.isEmpty() ? "" : " ";
    return feet + " ft " + inches + gap + part + " in";
  }
}
