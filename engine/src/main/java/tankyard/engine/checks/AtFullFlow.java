package tankyard.engine.checks;

import java.util.HashMap;
import java.util.Map;
import tankyard.engine.lease.Service;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.LineResult;
import tankyard.engine.study.WellResult;
import tankyard.engine.window.Window;

/**
 * What each separator's gauge reads at full flow, with the regulator built up, over the reading a
 * case was worked out for. Upper limits hold at full flow.
 *
 * @param addedPsi by separator
 * @param mostAddedPsi by any of them
 */
public record AtFullFlow(Map<String, Double> addedPsi, double mostAddedPsi) {

  public static AtFullFlow of(Evidence evidence, CaseResult result) {
    Map<String, Double> workedFor = new HashMap<>();
    result.wells().forEach(well -> workedFor.put(well.separatorId(), well.gauge().toPsi()));
    Map<String, Double> added = new HashMap<>();
    for (Window window : evidence.windows()) {
      window
          .setting()
          .ifPresent(
              setting ->
                  added.put(
                      window.separatorId(),
                      setting.gaugeAtFlow().toPsi()
                          - workedFor.getOrDefault(window.separatorId(), setting.gauge().toPsi())));
    }
    double most = added.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    return new AtFullFlow(Map.copyOf(added), most);
  }

  /** Pressure at a stuffing box; a crest on the way keeps the build-up from it. */
  public double boxPsi(WellResult well) {
    double box = well.box().value().toPsi();
    double fromGauge = well.gauge().toPsi() + well.lift().toPsi() + well.friction().toPsi();
    boolean reached = Math.abs(fromGauge - box) < 1e-6;
    return reached ? box + addedPsi.getOrDefault(well.separatorId(), 0.0) : box;
  }

  /** The highest in a line; with several separators the most any of them adds to a flow line. */
  public double highestPsi(LineResult line) {
    return line.highest().toPsi() + (line.service() == Service.FLOW_LINE ? mostAddedPsi : 0);
  }
}
