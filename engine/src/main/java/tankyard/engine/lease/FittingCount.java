package tankyard.engine.lease;

/**
 * So many of one fitting on a line.
 *
 * @param fitting catalogue id
 */
public record FittingCount(String fitting, int count) {
  public FittingCount {
    if (count < 1) {
      throw new IllegalArgumentException(
          "There must be at least one of fitting " + fitting + ", not " + count);
    }
  }
}
