package tankyard.engine.pipes;

import java.util.List;

/**
 * What the fittings of a run add to its pipe, spread evenly over its length.
 *
 * @param extraLengthM counted as so much more pipe
 * @param k velocity heads lost, whatever the flow
 * @param viscousK velocity heads lost times Reynolds number: the part that grows as flow gets thick
 */
public record MinorLosses(double extraLengthM, double k, double viscousK) {
  public static final MinorLosses NONE = new MinorLosses(0, 0, 0);

  public MinorLosses {
    if (!(extraLengthM >= 0 && k >= 0 && viscousK >= 0)) {
      throw new IllegalArgumentException(
          "Fittings can't add less than nothing: " + extraLengthM + " m, K " + k);
    }
  }

  public static MinorLosses ofExtraLength(double metres) {
    return new MinorLosses(metres, 0, 0);
  }

  public static MinorLosses ofK(double k) {
    return new MinorLosses(0, k, 0);
  }

  /** The sum of many, in a pipe of that bore. */
  public static MinorLosses of(List<? extends FittingLoss> fittings, double boreM) {
    return fittings.stream().map(f -> f.in(boreM)).reduce(NONE, MinorLosses::plus);
  }

  public MinorLosses plus(MinorLosses other) {
    return new MinorLosses(
        extraLengthM + other.extraLengthM, k + other.k, viscousK + other.viscousK);
  }

  public MinorLosses times(int count) {
    return new MinorLosses(extraLengthM * count, k * count, viscousK * count);
  }

  /** What falls to a part of the pipe they are spread along. */
  MinorLosses share(double share) {
    return new MinorLosses(extraLengthM * share, k * share, viscousK * share);
  }
}
