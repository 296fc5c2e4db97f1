package tankyard.engine.catalog;

import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Amount;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;

/**
 * The trade's name for a pipe size. A "2 in" pipe is 2.375 in outside and, by its wall, anything
 * inside: never use it as a bore.
 */
public record NominalSize(double inches) implements Comparable<NominalSize> {

  /**
   * Iron pipe sizes and their outside diameters, in, which steel and IPS polyethylene share (ASME
   * B36.10M; ASTM D3035).
   */
  private static final double[][] OUTSIDE = {
    {0.5, 0.84},
    {0.75, 1.05},
    {1, 1.315},
    {1.25, 1.66},
    {1.5, 1.9},
    {2, 2.375},
    {2.5, 2.875},
    {3, 3.5},
    {4, 4.5},
    {6, 6.625},
    {8, 8.625},
    {10, 10.75},
    {12, 12.75}
  };

  /** Outside diameters as typed are this close to the standard's, in. */
  private static final double OUTSIDE_ROUNDING = 0.02;

  public NominalSize {
    if (!(inches > 0) || !Double.isFinite(inches)) {
      throw new IllegalArgumentException("A nominal size must be more than zero: " + inches);
    }
  }

  public static NominalSize ofInches(double inches) {
    return new NominalSize(inches);
  }

  /** Reads {@code 2}, {@code 2 in} or {@code 1 1/2 in}. */
  public static NominalSize parse(String text) {
    Amount amount = AmountText.parse(text, Dimension.LENGTH, Unit.INCH);
    return new NominalSize(amount.in(Unit.INCH));
  }

  /** The size with that outside diameter, if it is an iron pipe size. */
  public static Optional<NominalSize> ofOutside(Length outside) {
    for (double[] row : OUTSIDE) {
      if (Math.abs(row[1] - outside.toInches()) < OUTSIDE_ROUNDING) {
        return Optional.of(new NominalSize(row[0]));
      }
    }
    return Optional.empty();
  }

  /** The size whose name is closest to the bore, for a pipe of which no more is known. */
  public static NominalSize nearBore(Length bore) {
    double[] best = OUTSIDE[0];
    for (double[] row : OUTSIDE) {
      if (Math.abs(row[0] - bore.toInches()) < Math.abs(best[0] - bore.toInches())) {
        best = row;
      }
    }
    return new NominalSize(best[0]);
  }

  /** The sizes of the standard's table, small ones first. */
  public static List<NominalSize> standard() {
    return java.util.Arrays.stream(OUTSIDE).map(row -> new NominalSize(row[0])).toList();
  }

  /** For example {@code 2 in} or {@code 1 1/2 in}. */
  public String words() {
    double whole = Math.floor(inches);
    String part =
        switch ((int) Math.round((inches - whole) * 4)) {
          case 1 -> "1/4";
          case 2 -> "1/2";
          case 3 -> "3/4";
          default -> "";
        };
    if (part.isEmpty() || (inches - whole) * 4 != Math.rint((inches - whole) * 4)) {
      return Figures.exact(inches) + " in";
    }
    return (whole == 0 ? "" : Figures.exact(whole) + " ") + part + " in";
  }

  @Override
  public int compareTo(NominalSize other) {
    return Double.compare(inches, other.inches);
  }

  @Override
  public String toString() {
    return words();
  }
}
