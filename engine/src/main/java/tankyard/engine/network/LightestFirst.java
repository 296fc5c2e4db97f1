package tankyard.engine.network;

import java.util.Arrays;

/**
 * Runs met on the way, the lightest first; of equal ones the one met first. A heap of bare numbers:
 * the weight, rounded to a float, in the upper half of a long and the place in the lower.
 */
final class LightestFirst {
  private final int[] runAt;
  private long[] heap = new long[64];
  private int size;
  private int met;

  /**
   * Empty.
   *
   * @param runs the most that are met, each once
   */
  LightestFirst(int runs) {
    runAt = new int[runs];
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
    runAt[met] = run;
    if (size == heap.length) {
      heap = Arrays.copyOf(heap, 2 * size);
    }
    long key = ((long) Float.floatToIntBits((float) Math.max(0, weight)) << 32) | met++;
    int at = size++;
    while (at > 0 && heap[(at - 1) / 2] > key) {
      heap[at] = heap[(at - 1) / 2];
      at = (at - 1) / 2;
    }
    heap[at] = key;
  }

  /** Takes the lightest run out; there must be one. */
  int poll() {
    int run = runAt[(int) heap[0]];
    long last = heap[--size];
    int at = 0;
    int below = 1;
    while (below < size) {
      if (below + 1 < size && heap[below + 1] < heap[below]) {
        below++;
      }
      if (heap[below] >= last) {
        break;
      }
      heap[at] = heap[below];
      at = below;
      below = 2 * at + 1;
    }
    heap[at] = last;
    return run;
  }
}
