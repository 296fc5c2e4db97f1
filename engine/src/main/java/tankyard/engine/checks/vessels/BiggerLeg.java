package tankyard.engine.checks.vessels;

import java.util.Optional;
import tankyard.engine.catalog.NextSize;
import tankyard.engine.catalog.Pipe;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.pipes.LineLaw;
import tankyard.engine.pipes.PipeRun;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.LaidLine;
import tankyard.engine.study.LegRun;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Window;

/**
 * The least with the water leg in the next size of pipe: the same trench, the same rate, the line
 * loss worked out anew. Only for a leg of one line; of several it is left open which to change.
 *
 * @param line the leg as it is
 * @param pipe the next size
 */
record BiggerLeg(LaidLine line, Pipe pipe, double leastPsi) {

  static Optional<BiggerLeg> of(Window window, CaseStudy study) {
    String lineId = window.least().map(PressureLimit::thingId).orElse("");
    return window.least().flatMap(least -> leg(study, window)).stream()
        .filter(leg -> leg.runs().size() == 1)
        .filter(leg -> leg.runs().get(0).laid().id().equals(lineId))
        .findFirst()
        .flatMap(leg -> bigger(leg, window, study));
  }

  private static Optional<LegRun> leg(CaseStudy study, Window window) {
    String lineId = window.least().orElseThrow().thingId();
    return study.survey().separators().stream()
        .filter(s -> s.id().equals(window.separatorId()))
        .flatMap(s -> study.waterLegs(s).stream())
        .filter(leg -> leg.runs().stream().anyMatch(r -> r.laid().id().equals(lineId)))
        .findFirst();
  }

  private static Optional<BiggerLeg> bigger(LegRun leg, Window window, CaseStudy study) {
    LaidLine line = leg.runs().get(0).laid();
    return NextSize.after(line.pipe(), study.survey().catalog())
        .map(pipe -> new BiggerLeg(line, pipe, leastPsi(window, line, lossShare(leg, line, pipe))));
  }

  /** Line loss in the bigger pipe over the loss in the present one. */
  private static double lossShare(LegRun leg, LaidLine line, Pipe pipe) {
    PipeRun run = line.law().runs().get(0);
    LineLaw wider =
        LineLaw.of(
            new PipeRun(pipe.bore().metres(), pipe.roughness().metres(), run.path(), run.minor()));
    Liquid liquid = leg.liquid().liquid();
    double flow = Math.abs(leg.runs().get(0).flow());
    double now = line.law().friction(liquid).drop(flow).pascals();
    return now > 0 ? wider.friction(liquid).drop(flow).pascals() / now : 1;
  }

  private static double leastPsi(Window window, LaidLine line, double lossShare) {
    return window.needed().stream()
        .mapToDouble(
            limit ->
                limit.gauge().value().toPsi()
                    - (limit.thingId().equals(line.id())
                        ? limit.friction().toPsi() * (1 - lossShare)
                        : 0))
        .max()
        .orElseThrow();
  }
}
