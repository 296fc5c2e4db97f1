package tankyard.engine.study;

import tankyard.engine.network.Solved;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;

/**
 * What a solve leaves over when mass and energy are added up again. More than a hundred-millionth
 * of the throughput or 0.01 Pa is no result.
 *
 * @param lines which were solved together: "gathering" or "injection"
 * @param throughput all that goes through
 * @param massLeft at the joint where it fits worst
 * @param energyLeft along the line where it fits worst
 * @param worstLine its id; empty where there is none
 */
public record NetworkAudit(
    String lines,
    LiquidRate throughput,
    LiquidRate massLeft,
    Pressure energyLeft,
    String worstLine) {
  static NetworkAudit of(String lines, Solved.Audit audit) {
    return new NetworkAudit(
        lines,
        CaseStudy.barrels(audit.throughput()),
        CaseStudy.barrels(audit.worstMass()),
        Pressure.psiFromPascals(audit.worstEnergyPa()),
        audit.worstRun());
  }
}
