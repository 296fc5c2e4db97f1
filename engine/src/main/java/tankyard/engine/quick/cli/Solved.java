package tankyard.engine.quick.cli;

import java.util.Map;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;

/** A quick sum with what went in and what came out. */
record Solved(QuickSum sum, QuickValues values, QuickResult result) {
  static Solved of(QuickSum sum, Map<String, String> typed) {
    QuickValues values = QuickValues.read(sum, typed);
    return new Solved(sum, values, sum.compute(values));
  }
}
