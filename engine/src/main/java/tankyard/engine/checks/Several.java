package tankyard.engine.checks;

import java.util.List;

/** Names in a row that stay readable when there are many. */
public final class Several {
  private static final int MOST = 5;

  private Several() {}

  /** For example "Well 1, Well 2 and Well 5", or "Well 1, Well 2, Well 3, Well 4 and 8 more". */
  public static String named(List<String> names) {
    if (names.size() <= 1) {
      return String.join("", names);
    }
    boolean all = names.size() <= MOST;
    int shown = all ? names.size() - 1 : MOST - 1;
    String last = all ? names.get(shown) : names.size() - shown + " more";
    return String.join(", ", names.subList(0, shown)) + " and " + last;
  }
}
