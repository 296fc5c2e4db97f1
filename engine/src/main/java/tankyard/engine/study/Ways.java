package tankyard.engine.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.network.Layout;
import tankyard.engine.network.Solved;

/**
 * The way each well's fluid takes through the gathering lines, the larger flow at every parting.
 * Each is walked once, when it is first asked for.
 */
final class Ways {
  private static final int NONE = -1;

  private final Layout layout;
  private final Solved solved;
  private final Map<String, List<Integer>> byWell = new HashMap<>();

  Ways(Layout layout, Solved solved) {
    this.layout = layout;
    this.solved = solved;
  }

  /** Numbers of the lines on a well's way, from the well on. */
  List<Integer> of(String wellId) {
    return byWell.computeIfAbsent(wellId, this::walk);
  }

  /** Where it ends up; empty where its lines lead to nothing that is held. */
  Optional<String> endOf(String wellId) {
    return endOf(of(wellId));
  }

  /** Where a way ends up; empty where it leads to nothing that is held. */
  Optional<String> endOf(List<Integer> way) {
    if (way.isEmpty()) {
      return Optional.empty();
    }
    int last = way.get(way.size() - 1);
    int end = layout.downstream(last, solved.flow(last));
    return layout.isHeld(end) ? Optional.of(layout.joints().get(end)) : Optional.empty();
  }

  /** Numbers of the lines on the way of what is in a line, from that line on. */
  List<Integer> from(int run) {
    List<Integer> way = new ArrayList<>();
    walk(run, way);
    return way;
  }

  private List<Integer> walk(String wellId) {
    List<Integer> way = new ArrayList<>();
    walk(outOf(layout.joint(wellId), way), way);
    return way;
  }

  private void walk(int first, List<Integer> way) {
    int next = first;
    while (next != NONE) {
      way.add(next);
      int here = layout.downstream(next, solved.flow(next));
      next = layout.isHeld(here) ? NONE : outOf(here, way);
    }
  }

  private int outOf(int joint, List<Integer> taken) {
    int best = NONE;
    for (int k = 0; k < layout.degree(joint); k++) {
      int run = layout.runAt(joint, k);
      double flow = solved.flow(run);
      boolean leaves = layout.upstream(run, flow) == joint && !taken.contains(run);
      if (leaves && (best == NONE || Math.abs(flow) > Math.abs(solved.flow(best)))) {
        best = run;
      }
    }
    return best;
  }
}
