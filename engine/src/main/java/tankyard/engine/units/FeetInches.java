package tankyard.engine.units;

/** A height as a welder reads it off a tape: 16 ft 4 3/4 in, to the nearest quarter inch. */
public final class FeetInches {
  private static final int QUARTERS_IN_A_FOOT = 48;
  private static final String[] QUARTERS = {"", "1/4", "1/2", "3/4"};

  private FeetInches() {}

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
