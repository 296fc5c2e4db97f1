package tankyard.engine.study;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tankyard.engine.network.Layout;
import tankyard.engine.network.Solved;

/**
 * All that fluid of some wells runs through, by every way it parts into.
 *
 * @param lines ids of the gathering lines
 * @param vessels ids of the vessels they lead to
 */
record Downstream(Set<String> lines, Set<String> vessels) {

  static Downstream of(
      Layout layout, List<LaidLine> runs, Solved solved, Collection<String> wellIds) {
    Set<String> lines = new HashSet<>();
    Set<String> vessels = new HashSet<>();
    Set<Integer> seen = new HashSet<>();
    Deque<Integer> next = new ArrayDeque<>();
    wellIds.forEach(id -> next.add(layout.joint(id)));
    while (!next.isEmpty()) {
      int joint = next.remove();
      if (!seen.add(joint)) {
        continue;
      }
      if (layout.isHeld(joint)) {
        vessels.add(layout.joints().get(joint));
        continue;
      }
      for (int k = 0; k < layout.degree(joint); k++) {
        int run = layout.runAt(joint, k);
        double flow = solved.flow(run);
        if (flow != 0 && layout.upstream(run, flow) == joint) {
          lines.add(runs.get(run).id());
          next.add(layout.downstream(run, flow));
        }
      }
    }
    return new Downstream(lines, vessels);
  }
}
