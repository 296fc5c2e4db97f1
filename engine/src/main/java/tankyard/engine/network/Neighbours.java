package tankyard.engine.network;

/** The runs that meet at each joint, all in one row. */
final class Neighbours {
  private final int[] first;
  private final int[] run;

  Neighbours(int joints, int[] from, int[] to) {
    first = new int[joints + 1];
    for (int i = 0; i < from.length; i++) {
      first[from[i] + 1]++;
      first[to[i] + 1]++;
    }
    for (int j = 0; j < joints; j++) {
      first[j + 1] += first[j];
    }
    int[] next = first.clone();
    run = new int[2 * from.length];
    for (int i = 0; i < from.length; i++) {
      run[next[from[i]]++] = i;
      run[next[to[i]]++] = i;
    }
  }

  int degree(int joint) {
    return first[joint + 1] - first[joint];
  }

  int runAt(int joint, int k) {
    return run[first[joint] + k];
  }
}
