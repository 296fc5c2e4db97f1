package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.DesignCase.Season;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.SeasonPair;
import tankyard.engine.lease.Well;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.LineResult;
import tankyard.engine.study.Restart;
import tankyard.engine.study.WellResult;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.Speed;
import tankyard.engine.units.Unit;

/** Every line in summer and in winter, and what starts cold lines again. */
final class ColdSection {
  private static final String NONE = "-";

  private final Draft draft;

  private ColdSection(Draft draft) {
    this.draft = draft;
  }

  static List<Section> of(Draft draft) {
    ColdSection section = new ColdSection(draft);
    List<Line> lines =
        draft.results().lease().lines().stream()
            .filter(l -> section.results(l).findAny().isPresent())
            .toList();
    if (lines.isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>(section.seasons(lines));
    blocks.addAll(section.restarts(lines));
    return List.of(new Section("Summer and winter", blocks));
  }

  private List<Block> seasons(List<Line> lines) {
    List<SeasonPair> pairs = SeasonPair.of(draft.results().lease().cases());
    List<Block> blocks = new ArrayList<>();
    for (SeasonPair pair : pairs) {
      String title = "Lines: " + quoted(pair.summer()) + " beside " + quoted(pair.winter());
      blocks.add(table(title, lines, List.of(pair.summer(), pair.winter())));
    }
    if (pairs.isEmpty()) {
      blocks.add(
          table(
              "Lines",
              lines,
              Stream.of(Season.values()).flatMap(season -> only(season).stream()).toList()));
    }
    blocks.add(new Block.Words(compared(pairs) + words() + LegsRated.words(draft)));
    return blocks;
  }

  /** Where one season has no case: the case of the other in which the lines lose most together. */
  private Optional<DesignCase> only(Season season) {
    return draft.results().cases().stream()
        .filter(c -> c.designCase().season() == season)
        .max(
            Comparator.comparingDouble(
                c -> c.lines().stream().mapToDouble(l -> l.friction().value().pascals()).sum()))
        .map(CaseResult::designCase);
  }

  private static String quoted(DesignCase designCase) {
    return "\"" + designCase.name() + "\"";
  }

  private String compared(List<SeasonPair> pairs) {
    if (pairs.isEmpty()) {
      String shown =
          only(Season.SUMMER).or(() -> only(Season.WINTER)).map(ColdSection::quoted).orElse("");
      return "No case has the other season; shown is " + shown + ". ";
    }
    SeasonPair first = pairs.get(0);
    return first.alike()
        ? "The two cases of a table differ by the season alone. "
        : "No two cases differ by the season alone: "
            + quoted(first.summer())
            + " and "
            + quoted(first.winter())
            + " differ in rates too, so the cold is not all that parts them. ";
  }

  /** A column for each case of each number; one case needs no name of its season. */
  private Block table(String title, List<Line> lines, List<DesignCase> cases) {
    List<Block.Column> columns = new ArrayList<>(List.of(text("line")));
    for (String what :
        List.of(
            draft.head("loss", Figure.PART),
            draft.head("speed", Figure.SPEED),
            draft.head("start", Figure.WARMTH),
            draft.head("end", Figure.WARMTH),
            draft.head("thick", Figure.THICKNESS))) {
      columns.add(number(cases.size() > 1 ? what + " summer" : what));
      cases.stream().skip(1).forEach(c -> columns.add(number("winter")));
    }
    columns.add(number(draft.head("cools in", Figure.DISTANCE)));
    return new Block.Table(title, columns, lines.stream().map(line -> row(line, cases)).toList());
  }

  private List<String> row(Line line, List<DesignCase> cases) {
    List<Optional<LineResult>> results = cases.stream().map(c -> in(c, line)).toList();
    List<String> row = new ArrayList<>(List.of(line.name()));
    for (Function<LineResult, String> shown : shown()) {
      results.forEach(r -> row.add(r.map(shown).orElse(NONE)));
    }
    row.add(
        results.stream()
            .flatMap(Optional::stream)
            .reduce((warm, cold) -> cold)
            .flatMap(r -> r.temperatures().coolingLength())
            .map(l -> draft.digits(Figure.DISTANCE, l.value()))
            .orElse(NONE));
    return row;
  }

  private Optional<LineResult> in(DesignCase designCase, Line line) {
    return draft.results().cases().stream()
        .filter(c -> c.designCase().id().equals(designCase.id()))
        .findFirst()
        .flatMap(c -> c.line(line.id()));
  }

  private List<Function<LineResult, String>> shown() {
    return List.of(
        r -> draft.digits(Figure.PART, r.friction().value()) + (r.isColdLaminar() ? "~" : ""),
        r -> draft.digits(Figure.SPEED, Speed.of(r.velocityFtPerS(), Unit.FOOT_PER_SECOND)),
        r -> draft.digits(Figure.WARMTH, r.temperatures().start()),
        r -> draft.digits(Figure.WARMTH, r.temperatures().end()),
        r -> draft.digits(Figure.THICKNESS, r.viscosity().value()));
  }

  private String words() {
    return "Thick is what the line carries at the ground's temperature. Where a well's"
        + " temperature is typed, its fluid comes to the ground's along the line: over the length"
        + " it cools in, the difference falls to 37 %. Other lines, and all legs, are taken as cold"
        + " as the ground, on the thick side. A tilde marks cold laminar flow: such a loss carries"
        + " a factor of two; measure the viscosity of the emulsion before spending on it.";
  }

  private List<Block> restarts(List<Line> lines) {
    List<Line> gelled = lines.stream().filter(l -> hardest(l).isPresent()).toList();
    if (gelled.isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Table(
            "Starting again after standing cold: lines",
            List.of(
                text("line"),
                number(draft.head("gel", Figure.READING)),
                number(draft.head("highest then", Figure.READING)),
                number(draft.head("rating", Figure.HIGH)),
                number("working")),
            gelled.stream().map(this::restartRow).toList()));
    List<Well> wells =
        draft.results().lease().wells().stream().filter(w -> worstBox(w).isPresent()).toList();
    blocks.add(
        new Block.Table(
            "Starting again after standing cold: wells",
            List.of(
                text("well"),
                number(draft.head("box then", Figure.READING)),
                number(draft.head("limit", Figure.READING)),
                number("working")),
            wells.stream().map(this::wellRow).toList()));
    blocks.add(
        new Block.Words(
            "Oil that stood below its pour point gels. Every line on a well's way must yield before"
                + " anything moves: 4 x gel strength x length / bore each, added to the gauge"
                + " reading and the height. Gel strengths measured twice differ by a factor of"
                + " two."));
    return blocks;
  }

  private List<String> restartRow(Line line) {
    LineResult result = hardest(line).orElseThrow();
    Restart restart = result.restart().orElseThrow();
    Draft.Shown shown =
        draft.headline(line.name() + ": to start it again", Figure.READING, restart.highest());
    return List.of(
        line.name(),
        draft.digits(Figure.READING, restart.gel().value()),
        shown.digits() + over(restart.highest().value(), result.rating()),
        result.rating().map(r -> draft.digits(Figure.HIGH, r)).orElse(NONE),
        shown.mark());
  }

  private List<String> wellRow(Well well) {
    WellResult result = worstBox(well).orElseThrow();
    Draft.Shown shown =
        draft.headline(
            well.name() + ": to start its lines again",
            Figure.READING,
            result.restart().orElseThrow().highest());
    return List.of(
        well.name(),
        shown.digits() + over(result.restart().get().highest().value(), result.limit()),
        result.limit().map(l -> draft.digits(Figure.READING, l)).orElse("not known"),
        shown.mark());
  }

  private static String over(Quantity value, Optional<? extends Quantity> limit) {
    return limit.filter(l -> value.si() > l.si()).isPresent() ? "*" : "";
  }

  private Stream<LineResult> results(Line line) {
    return draft.results().cases().stream().flatMap(c -> c.line(line.id()).stream());
  }

  private Optional<LineResult> hardest(Line line) {
    return results(line)
        .filter(r -> r.restart().isPresent())
        .max(Comparator.comparingDouble(r -> r.restart().get().highest().value().pascals()));
  }

  private Optional<WellResult> worstBox(Well well) {
    return draft.results().cases().stream()
        .flatMap(c -> c.well(well.id()).stream())
        .filter(w -> w.restart().isPresent())
        .max(Comparator.comparingDouble(w -> w.restart().get().highest().value().pascals()));
  }
}
