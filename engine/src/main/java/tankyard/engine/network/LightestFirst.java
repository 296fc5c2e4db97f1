package tankyard.engine.network;

import java.util.Arrays;

/**
 * Runs met on the way, the lightest first, as near as a sixteenth: weights of about one size share
 * a bucket, and of those the one met first comes first. Putting in and taking out cost the same
 * however many there are.
 */
final class LightestFirst {
  private static final int NONE = -1;

  /**
   * Bits of a float below those that tell the bucket: eight of exponent and four of digits stay.
   */
  private static final int BELOW = 19;

  private static final int BUCKETS = 1 << (31 - BELOW);

  private final int[] first = new int[BUCKETS];
  private final int[] last = new int[BUCKETS];

  /** Of each run, the one met after it in its bucket. */
  private final int[] next;

  private int lightest = BUCKETS;
  private int size;

  /**
   * Empty.
   *
   * @param runs their numbers are below it, and each is put in once
   */
  LightestFirst(int runs) {
    next = new int[runs];
    Arrays.fill(first, NONE);
  }

  boolean isEmpty() {
    return size == 0;
  }

  /**
   * Puts a run in.
   *
   * @param weight not negative, so that its bits are in order
   */
  void add(int run, double weight) {
    int bucket = Float.floatToIntBits((float) Math.max(0, weight)) >>> BELOW;
    if (first[bucket] == NONE) {
      first[bucket] = run;
    } else {
      next[last[bucket]] = run;
    }
    last[bucket] = run;
    next[run] = NONE;
    lightest = Math.min(lightest, bucket);
    size++;
  }

  /** Takes the lightest run out; there must be one. */
  int poll() {
    while (first[lightest] == NONE) {
      lightest++;
    }
    int run = first[lightest];
    first[lightest] = next[run];
    size--;
    return run;
  }
}
