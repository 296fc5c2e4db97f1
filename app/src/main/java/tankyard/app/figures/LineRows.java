package tankyard.app.figures;

import java.util.List;
import java.util.Optional;
import tankyard.engine.study.LineResult;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;

/** The rows about one line. */
public final class LineRows {
  private LineRows() {}

  public static List<FigureRow> of(CaseFigures figures, String lineId) {
    boolean metric = figures.units() == UnitSystem.METRIC;
    Unit speed = metric ? Unit.METRE_PER_SECOND : Unit.FOOT_PER_SECOND;
    return figures
        .<LineResult>rows(c -> c.line(lineId))
        .plain("Carries", "The rate its loss is taken at.", r -> Optional.of(r.flow()))
        .words("Taken as", "Why that rate.", r -> Optional.of(r.flowWords()))
        .computed("Friction", "Lost on the way, up to its control point.", LineResult::friction)
        .computed(
            "Static", "From the difference in height, up to its control point.", LineResult::lift)
        .plain("At its start", "Pressure where it begins.", r -> Optional.of(r.start()))
        .plain("At its end", "Pressure where it ends.", r -> Optional.of(r.end()))
        .plain("Highest", "Anywhere along it.", r -> Optional.of(r.highest()))
        .plain("Pipe stands", "At its temperature, with what is in it.", LineResult::rating)
        .number(
            speed,
            "Velocity",
            "Below about 1 ft/s sand settles; far above 5 ft/s noise and wear begin. Common"
                + " practice, no source.",
            r -> Optional.of(speed.fromSi(Unit.FOOT_PER_SECOND.toSi(r.velocityFtPerS()))))
        .words("Flow", "How it runs.", r -> Optional.of(r.regime()))
        .plain("Length of pipe", "Along the ground.", r -> Optional.of(r.length()))
        .plain("Holds", "What drains back or spills.", r -> Optional.of(r.contents()))
        .rows();
  }
}
