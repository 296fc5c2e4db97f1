package tankyard.engine.study;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.lease.Well;

/** Gas that was typed and can't be worked, said so that nobody takes it for counted. */
final class GasGaps {
  private GasGaps() {}

  static List<Diagnosis> of(Survey survey) {
    List<Diagnosis> found = new ArrayList<>();
    List<Well> gassy =
        survey.lease().wells().stream()
            .filter(w -> w.status().stays() && w.gas().filter(g -> g.typed().si() > 0).isPresent())
            .toList();
    gassy.stream().filter(GasGaps::isDry).forEach(w -> found.add(dry(w)));
    if (gassy.stream().anyMatch(w -> !isDry(w))) {
      List<LaidLine> lines = survey.gathering().lines();
      for (int i = 0; i < lines.size(); i++) {
        if (!survey.gathering().flowIsGiven(i)) {
          found.add(loop(lines.get(i)));
        }
      }
    }
    return found;
  }

  private static boolean isDry(Well well) {
    return well.oil().cubicMetresPerSecond() + well.water().cubicMetresPerSecond() == 0;
  }

  private static Diagnosis dry(Well well) {
    return new Diagnosis(
        "gas-without-liquid",
        well.id(),
        well.name()
            + " makes gas and no liquid: its gas is not counted anywhere. Give it a gas line of its"
            + " own.");
  }

  private static Diagnosis loop(LaidLine line) {
    return new Diagnosis(
        "gas-in-loop",
        line.id(),
        line.line().name()
            + " is part of a loop or joins two separators: gas is counted in the lines before and"
            + " after it and not in it. Open the loop to see the line with gas.");
  }
}
