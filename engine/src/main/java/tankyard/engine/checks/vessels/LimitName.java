package tankyard.engine.checks.vessels;

import tankyard.engine.window.PressureLimit;

/** A limit's name in the middle of a sentence. */
final class LimitName {
  private LimitName() {}

  /** For example "the crest at 1,000 ft on Water leg", "Well 9's stuffing box". */
  static String of(PressureLimit limit) {
    return limit.name().startsWith("crest") ? "the " + limit.name() : limit.name();
  }
}
