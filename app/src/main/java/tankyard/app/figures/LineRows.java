package tankyard.app.figures;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.engine.study.GasInLine;
import tankyard.engine.study.LineResult;
import tankyard.engine.study.Restart;
import tankyard.engine.study.SharedLine;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;

/** The rows about one line. */
public final class LineRows {
  private LineRows() {}

  public static List<FigureRow> of(CaseFigures figures, String lineId) {
    boolean metric = figures.units() == UnitSystem.METRIC;
    Unit speed = metric ? Unit.METRE_PER_SECOND : Unit.FOOT_PER_SECOND;
    List<FigureRow> rows =
        figures
            .<LineResult>rows(c -> c.line(lineId))
            .plain("Carries", "The rate its loss is taken at.", r -> Optional.of(r.flow()))
            .words("Taken as", "Why that rate.", r -> Optional.of(r.flowWords()))
            .computed("Friction", "Lost on the way, up to its control point.", LineResult::friction)
            .computed(
                "Static",
                "From the difference in height, up to its control point.",
                LineResult::lift)
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
    return Stream.of(rows, gas(figures, lineId), warmth(figures, lineId), shared(figures, lineId))
        .flatMap(List::stream)
        .toList();
  }

  /** Nothing where no gas comes with the liquid. */
  private static List<FigureRow> gas(CaseFigures figures, String lineId) {
    return figures
        .<GasInLine>rows(c -> c.line(lineId).flatMap(LineResult::gas))
        .plain(
            "Free gas",
            "Beside the liquid at the end it leaves by, less what the oil holds.",
            g -> Optional.of(g.free()))
        .plain(
            "Gas, of volume",
            "Its part of the flow by volume at that end.",
            g -> Optional.of(g.gasPart()))
        .plain(
            "Hold-up",
            "Part of the pipe that liquid fills, on the average.",
            g -> Optional.of(g.holdUp()))
        .plain(
            "Liquid alone",
            "Its rate over the whole bore at that end.",
            g -> Optional.of(g.liquidSpeed()))
        .plain(
            "Gas alone",
            "Its rate over the whole bore at that end.",
            g -> Optional.of(g.gasSpeed()))
        .maybe(
            "May wear above",
            "Both together: C/√density with C 100, API RP 14E as quoted; its basis is disputed.",
            GasInLine::wearSpeed)
        .rows();
  }

  /** How warm it is, and what cold makes of it. */
  private static List<FigureRow> warmth(CaseFigures figures, String lineId) {
    return figures
        .<LineResult>rows(c -> c.line(lineId))
        .plain(
            "Warm at its start",
            "As cold as the ground where no well's temperature is typed.",
            r -> Optional.of(r.temperatures().start()))
        .plain("Warm at its end", "Of the liquid there.", r -> Optional.of(r.temperatures().end()))
        .plain(
            "Pipe rated at",
            "The warmest that can stand in it; for a leg, the warmest that comes into its vessel.",
            r -> Optional.of(r.temperatures().rated()))
        .maybe(
            "Cools over",
            "Over this length the difference to the ground falls to 37 %.",
            r -> r.temperatures().coolingLength())
        .computed(
            "Thick in the ground",
            "Viscosity of what it carries, as cold as the ground. Cold laminar losses carry a factor"
                + " of two.",
            LineResult::viscosity)
        .maybe(
            "To start it again cold",
            "Where it starts, once all lines to the separator stood below the oil's pour point.",
            r -> r.restart().map(Restart::highest))
        .rows();
  }

  /**
   * What a line several wells share carries over the day; nothing where all run the clock round.
   */
  private static List<FigureRow> shared(CaseFigures figures, String lineId) {
    return figures
        .<SharedLine>rows(c -> c.shared(lineId).filter(LineRows::isTimed))
        .plain("Day's average", "Of all wells behind it.", s -> Optional.of(s.average()))
        .computed(
            "Most of the time up to",
            "Not passed for the share of the time typed with the lease, wells running at times of"
                + " their own.",
            SharedLine::atOnce)
        .plain(
            "All wells on",
            "As after an outage, when all come on together.",
            s -> Optional.of(s.allOn()))
        .plain(
            "All on, of the time",
            "If each runs its hours at a time of its own.",
            s -> Optional.of(s.allOnShare()))
        .computed("Loss most of the time", "At that rate.", SharedLine::atOnceLoss)
        .plain("Loss with all on", "At that rate.", s -> Optional.of(s.allOnLoss()))
        .plain(
            "All on, timers in two banks",
            "The most it carries if the two banks never run together.",
            s -> s.staggered().map(SharedLine.Staggered::rate))
        .plain("Loss then", "With the larger bank on.", s -> s.staggered().map(t -> t.loss()))
        .rows();
  }

  private static boolean isTimed(SharedLine line) {
    return line.allOn().toBarrelsPerDay() > line.average().toBarrelsPerDay() * (1 + 1e-9);
  }
}
