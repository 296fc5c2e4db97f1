package tankyard.engine.study;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.BiconnectivityInspector;
import tankyard.engine.network.Layout;

/**
 * Which lines only one well's liquid can pass, however the flows turn out: single lines behind
 * which one well lies, and all lines of a loop or of a pair laid side by side that no other well
 * comes into. A line to a second vessel is none of them: what the vessels' pressures drive from one
 * to the other would pass it too.
 */
final class OwnLines {
  private final Layout layout;

  /** Lines that lie on one loop, or on loops that share a line, have the same number. */
  private final int[] block;

  private final int[] wellsBehind;
  private final String[] oneWell;

  private OwnLines(Layout layout, int[] block, Set<String> wells) {
    this.layout = layout;
    this.block = block;
    int blocks = IntStream.of(block).max().orElse(-1) + 1;
    this.wellsBehind = new int[blocks];
    this.oneWell = new String[blocks];
    count(wells);
  }

  /** Of lines without loops: each is for itself. */
  static OwnLines ofTree(Layout layout, Set<String> wells) {
    return new OwnLines(layout, IntStream.range(0, layout.runs().size()).toArray(), wells);
  }

  /**
   * Of any lines.
   *
   * @param toAnyVessel the lines by id, with all vessels taken as one joint
   */
  static OwnLines of(Layout layout, Graph<String, String> toAnyVessel, Set<String> wells) {
    int[] block = new int[layout.runs().size()];
    // Number 0 is left to lines from vessel to vessel: no well lies behind them.
    int next = 1;
    for (Graph<String, String> part : new BiconnectivityInspector<>(toAnyVessel).getBlocks()) {
      for (String line : part.edgeSet()) {
        block[layout.run(line)] = next;
      }
      next++;
    }
    return new OwnLines(layout, block, wells);
  }

  /** From the ends of the lines inwards: what lies beyond a joint lies behind its block. */
  private void count(Set<String> wells) {
    int[] beyond = new int[layout.joints().size()];
    String[] one = new String[beyond.length];
    int[] outwards = layout.outwards();
    for (int k = outwards.length - 1; k >= 0; k--) {
      int joint = outwards[k];
      if (layout.isHeld(joint)) {
        continue;
      }
      String id = layout.joints().get(joint);
      if (wells.contains(id)) {
        beyond[joint]++;
        one[joint] = id;
      }
      int line = layout.towardsHeld(joint);
      int inner = layout.otherEnd(line, joint);
      boolean leavesBlock = layout.isHeld(inner) || block[layout.towardsHeld(inner)] != block[line];
      if (leavesBlock) {
        add(block[line], beyond[joint], one[joint]);
      }
      beyond[inner] += beyond[joint];
      one[inner] = one[joint] == null ? one[inner] : one[joint];
    }
  }

  private void add(int number, int wells, String well) {
    wellsBehind[number] += wells;
    oneWell[number] = well == null ? oneWell[number] : well;
  }

  /** The one well by the line; a line that several share is not in it. */
  Map<String, String> byLine() {
    Map<Integer, Set<Integer>> vessels = new HashMap<>();
    List<Layout.Ends> runs = layout.runs();
    for (int run = 0; run < block.length; run++) {
      for (int end : new int[] {layout.from(run), layout.to(run)}) {
        if (layout.isHeld(end)) {
          vessels.computeIfAbsent(block[run], b -> new HashSet<>()).add(end);
        }
      }
    }
    Map<String, String> found = new HashMap<>();
    for (int run = 0; run < block.length; run++) {
      int manyVessels = Optional.ofNullable(vessels.get(block[run])).map(Set::size).orElse(0);
      if (wellsBehind[block[run]] == 1 && manyVessels <= 1) {
        found.put(runs.get(run).run(), oneWell[block[run]]);
      }
    }
    return found;
  }
}
