package tankyard.engine.units;

/** A height as a welder reads it off a tape: 16 ft 4 3/4 in, to the nearest quarter inch. */
public final class FeetInches {
  private static final int QUARTERS_IN_A_FOOT = 48;
  private static final String[] QUARTERS = {"", "1/4", "1/2", "3/4"};

  private FeetInches() {}

  /** As for a gauge line, with feet and inches both: {@code 14 ft 0 in}. */
  public static String onTape(Length length, Rounding rounding) {
    double exact = length.toFeet() * QUARTERS_IN_A_FOOT;
    long quarters = Math.round(rounding.round(exact, 0));
    return Math.floorDiv(quarters, QUARTERS_IN_A_FOOT)
        + " ft "
        + inches(Math.floorMod(quarters, QUARTERS_IN_A_FOOT));
  }

  /** For a sentence, without what is nothing: {@code 14 ft}. */
  public static String print(Length length) {
    long quarters = Math.round(length.toFeet() * QUARTERS_IN_A_FOOT);
    String sign = quarters < 0 ? "-" : "";
    long feet = Math.abs(quarters) / QUARTERS_IN_A_FOOT;
    long rest = Math.abs(quarters) % QUARTERS_IN_A_FOOT;
    String inches = inches(rest);
    if (feet == 0) {
      return sign + inches;
    }
    return sign + feet + " ft" + (rest == 0 ? "" : " " + inches);
  }

  private static String inches(long quarters) {
    long whole = quarters / 4;
    String part = QUARTERS[(int) (quarters % 4)];
    if (part.isEmpty()) {
      return whole + " in";
    }
    return (whole == 0 ? "" : whole + " ") + part + " in";
  }
}
