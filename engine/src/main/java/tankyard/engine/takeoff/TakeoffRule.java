package tankyard.engine.takeoff;

import tankyard.engine.working.Source;

/** Counts one subject off the drawing. */
public interface TakeoffRule {
  /** What it counts, in a sentence somebody can agree or disagree with. */
  String words();

  /** How that is known; common practice unless a rule says better. */
  default Source source() {
    return Source.commonPractice("what crews and stores list for a battery");
  }

  void count(Drawing drawing, Tally tally);
}
