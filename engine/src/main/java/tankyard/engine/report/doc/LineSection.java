package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import tankyard.engine.lease.Line;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.LineResult;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Speed;
import tankyard.engine.units.Unit;

/** Every line: what it is, what it loses in each case, and how near its rating it comes. */
final class LineSection {
  private static final String NONE = "-";

  private final Draft draft;

  private LineSection(Draft draft) {
    this.draft = draft;
  }

  static List<Section> of(Draft draft) {
    LineSection section = new LineSection(draft);
    List<Line> lines =
        draft.results().lease().lines().stream()
            .filter(l -> !section.results(l).isEmpty())
            .toList();
    if (lines.isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(section.list(lines));
    blocks.add(section.work(lines));
    blocks.addAll(section.losses(lines));
    blocks.add(
        new Block.Words(
            "Rate and speed are of the case in which the line loses most, and so is the working. A"
                + " line that one well has to itself is taken at the top of the pump's stroke. A"
                + " star marks a pressure above the pipe's rating. Where a crest is named, the line"
                + " past it runs part full; with no rate beside it, the crest holds the line and"
                + " nothing gets over it."
                + section.strokesMet()));
    SharedLineTable.of(draft, lines).ifPresent(blocks::add);
    SharedLineTable.words(draft).ifPresent(blocks::add);
    return List.of(new Section("Lines", blocks));
  }

  /** Which rule the shared lines were taken by, where a case takes strokes to meet. */
  private String strokesMet() {
    String met =
        draft.results().cases().stream()
            .map(CaseResult::designCase)
            .filter(c -> c.sharedSurgeFactor() != 1)
            .map(c -> "\"" + c.name() + "\" x " + Figures.significant(c.sharedSurgeFactor(), 3))
            .collect(Collectors.joining(", "));
    return met.isEmpty()
        ? ""
        : " Lines of several wells carry the sum of their wells; in case "
            + met
            + " is put on top, as if all strokes met. Strokes of different wells rarely do.";
  }

  private Block list(List<Line> lines) {
    List<Block.Column> columns =
        List.of(
            text("line"),
            text("service"),
            text("pipe"),
            number(draft.head("length", Figure.DISTANCE)),
            number(draft.head("holds", Figure.VOLUME)));
    return new Block.Table("Line list", columns, lines.stream().map(this::row).toList());
  }

  private List<String> row(Line line) {
    LineResult result = results(line).get(0);
    return List.of(
        line.name(),
        line.service().words(),
        draft.results().pipeName(line.pipe()),
        draft.digits(Figure.DISTANCE, result.length()),
        draft.digits(Figure.VOLUME, result.contents()));
  }

  /** A table of its own: beside the pipe's name the columns would be too narrow to read. */
  private Block work(List<Line> lines) {
    List<Block.Column> columns =
        List.of(
            text("line"),
            number(draft.head("rate", Figure.RATE)),
            number(draft.head("speed", Figure.SPEED)),
            text("regime"),
            number(draft.head("highest", Figure.READING)),
            number(draft.head("rating", Figure.HIGH)),
            text("crest"));
    return new Block.Table("Flow and pressure", columns, lines.stream().map(this::worked).toList());
  }

  private List<String> worked(Line line) {
    CaseResult hardest =
        draft.results().cases().stream()
            .filter(c -> c.line(line.id()).isPresent())
            .max(Comparator.comparingDouble(c -> c.line(line.id()).get().highest().pascals()))
            .orElseThrow();
    LineResult result = hardest.line(line.id()).orElseThrow();
    return List.of(
        line.name(),
        at(line, this::rate),
        at(line, this::speed),
        worst(line).map(LineResult::regime).orElse(NONE),
        draft.digits(Figure.READING, result.highest()) + (isOver(result) ? "*" : ""),
        result.rating().map(r -> draft.digits(Figure.HIGH, r)).orElse(NONE),
        result.crest().map(c -> "at " + draft.words(Figure.DISTANCE, c.distance())).orElse(NONE));
  }

  private static boolean isOver(LineResult result) {
    return result.rating().filter(r -> result.highest().pascals() > r.pascals()).isPresent();
  }

  private List<Block> losses(List<Line> lines) {
    return new CaseTable<>(draft, lines)
        .before(text("line"), Line::name)
        .after(number("working"), this::mark)
        .with(draft.head("Line loss", Figure.PART), this::loss);
  }

  private String at(Line line, java.util.function.Function<LineResult, String> shown) {
    return worst(line).map(shown).orElse(NONE);
  }

  private String rate(LineResult result) {
    return draft.digits(Figure.RATE, result.flow());
  }

  private String speed(LineResult result) {
    return draft.digits(Figure.SPEED, Speed.of(result.velocityFtPerS(), Unit.FOOT_PER_SECOND));
  }

  private String loss(Line line, CaseResult designCase) {
    return designCase
        .line(line.id())
        .map(r -> draft.digits(Figure.PART, r.friction().value()))
        .orElse(NONE);
  }

  private String mark(Line line) {
    return worst(line)
        .map(r -> draft.headline(line.name() + ": line loss", Figure.PART, r.friction()).mark())
        .orElse(NONE);
  }

  private List<LineResult> results(Line line) {
    return draft.results().cases().stream().flatMap(c -> c.line(line.id()).stream()).toList();
  }

  private Optional<LineResult> worst(Line line) {
    ToDoubleFunction<LineResult> loss = r -> r.friction().value().pascals();
    return results(line).stream().max(Comparator.comparingDouble(loss));
  }
}
