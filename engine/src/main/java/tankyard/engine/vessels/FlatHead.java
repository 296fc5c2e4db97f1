package tankyard.engine.vessels;

/** A flat end: it holds nothing. */
public record FlatHead() implements Head {
  @Override
  public double depthM() {
    return 0;
  }

  @Override
  public double lyingM3(double heightM) {
    return 0;
  }

  @Override
  public double standingM3(double heightM) {
    return 0;
  }

  @Override
  public String words() {
    return "flat";
  }
}
