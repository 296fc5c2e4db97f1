package tankyard.engine.checks.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Evidence;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.LineResult;
import tankyard.engine.study.Restart;
import tankyard.engine.study.WellResult;
import tankyard.engine.units.Pressure;
import tankyard.engine.working.Working;

/**
 * What starting a cold lease again asks of each line and box against what it stands.
 *
 * @param thingId the line or well
 * @param psi at its hardest pressed end
 * @param gelPsi part of it that is the gel's, of every line from there on
 * @param limitPsi what it stands
 * @param box whether it is a stuffing box; else a pipe
 */
record RestartLimits(
    CaseResult result,
    String thingId,
    double psi,
    double gelPsi,
    double limitPsi,
    boolean box,
    Working working) {

  /** Every line and box whose limit is known, in every case in which it gels. */
  static List<RestartLimits> of(Evidence evidence) {
    List<RestartLimits> found = new ArrayList<>();
    for (CaseResult result : evidence.cases()) {
      for (LineResult line : result.lines()) {
        line.restart().flatMap(r -> pipe(result, line, r)).ifPresent(found::add);
      }
      for (WellResult well : result.wells()) {
        box(result, well).ifPresent(found::add);
      }
    }
    return found;
  }

  /** As much again for the gel, since its strength is known to a factor of two. */
  double withTwiceTheGelPsi() {
    return psi + gelPsi;
  }

  private static Optional<RestartLimits> pipe(CaseResult result, LineResult line, Restart restart) {
    return line.rating()
        .map(
            rating ->
                new RestartLimits(
                    result,
                    line.lineId(),
                    restart.highest().value().toPsi(),
                    restart.allGel().toPsi(),
                    rating.toPsi(),
                    false,
                    restart.highest().working()));
  }

  private static Optional<RestartLimits> box(CaseResult result, WellResult well) {
    Optional<Pressure> limit = well.limit();
    return well.restart()
        .flatMap(
            restart ->
                limit.map(
                    most ->
                        new RestartLimits(
                            result,
                            well.wellId(),
                            restart.highest().value().toPsi(),
                            restart.allGel().toPsi(),
                            most.toPsi(),
                            true,
                            restart.highest().working())));
  }
}
