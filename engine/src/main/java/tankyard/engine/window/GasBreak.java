package tankyard.engine.window;

import java.util.List;
import tankyard.engine.study.VesselGas;

/**
 * Gas that keeps a separator from standing full of liquid, so that its window is not valid.
 *
 * @param caseIds the cases in which it does
 * @param gas what comes in the case with most of it
 */
public record GasBreak(List<String> caseIds, VesselGas gas) {
  public GasBreak {
    caseIds = List.copyOf(caseIds);
  }
}
