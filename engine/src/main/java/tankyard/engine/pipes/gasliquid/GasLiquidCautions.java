package tankyard.engine.pipes.gasliquid;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;

/** What must be said with a marched gas-liquid line, each thing once. */
final class GasLiquidCautions {
  private static final double FAST = 0.1;
  private final Map<String, Caution> byId = new LinkedHashMap<>();

  void look(Gradient here, double slope) {
    if (here.pattern() != FlowPattern.LIQUID && here.pattern() != FlowPattern.GAS) {
      say(
          "gas-liquid-correlation",
          "Gas and liquid together are worked out by a correlation from small level and tilted"
              + " pipes; a quarter of the pressure either way is usual.");
    }
    if (slope < 0 && here.drained()) {
      say(
          "gas-liquid-downhill",
          "On a way down the hold-up law gives less liquid than flows in; the fall is taken to give"
              + " back what the flow's own share of liquid weighs at the most.");
    }
    if (here.choking()) {
      say(
          "gas-near-sound",
          "The gas would near its speed of sound at the end of this line: the pressure printed is"
              + " not to be used. A larger pipe or less gas is needed.");
    } else if (here.acceleration() > FAST) {
      say(
          "gas-fast",
          Figures.significant(100 * here.acceleration(), 2)
              + " % of the pressure goes into speeding the gas up; look at the pipe's size.");
    }
  }

  void held(double pascals) {
    if (pascals > 0) {
      say(
          "gas-liquid-no-vacuum",
          "A fall on this line would draw "
              + Figures.significant(Unit.PSI.fromSi(pascals), 2)
              + " psi of vacuum; none is credited.");
    }
  }

  List<Caution> said() {
    return List.copyOf(byId.values());
  }

  private void say(String id, String words) {
    byId.putIfAbsent(id, new Caution(id, words));
  }
}
