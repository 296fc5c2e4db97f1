package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.SeparatorChoice;
import tankyard.engine.study.SeparatorResult;
import tankyard.engine.units.Length;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Time;
import tankyard.engine.working.Computed;

/** How long each separator holds its oil and water, and the water it must pass. */
final class VesselSection {
  private final Draft draft;

  private VesselSection(Draft draft) {
    this.draft = draft;
  }

  static List<Section> of(Draft draft) {
    VesselSection section = new VesselSection(draft);
    List<Block> tables = new ArrayList<>();
    draft.results().cases().stream()
        .findFirst()
        .ifPresent(
            c ->
                c.separators()
                    .forEach(
                        s -> {
                          tables.add(section.table(s));
                          tables.add(section.drops(s.separatorId()));
                          section.choice(s.separatorId()).ifPresent(tables::add);
                        }));
    return tables.isEmpty() ? List.of() : List.of(new Section("Separators", tables));
  }

  private Block table(SeparatorResult first) {
    String id = first.separatorId();
    List<Block.Column> columns =
        List.of(
            text("case"),
            number(draft.head("oil", Figure.RATE)),
            number(draft.head("oil stays", Figure.MINUTES)),
            text("working"),
            number(draft.head("water", Figure.RATE)),
            number(draft.head("water stays", Figure.MINUTES)),
            text("working"),
            number(draft.head("design water", Figure.RATE)),
            text("working"));
    List<List<String>> rows =
        draft.results().cases().stream()
            .flatMap(c -> c.separator(id).map(s -> row(c, s)).stream())
            .toList();
    return new Block.Table(
        draft.nameOf(id)
            + ": "
            + draft.words(Figure.VOLUME, first.oilVolume())
            + " of oil above "
            + draft.words(Figure.VOLUME, first.waterVolume())
            + " of water",
        columns,
        rows);
  }

  private Optional<Block> choice(String id) {
    List<Block.Column> columns =
        List.of(
            text("size"),
            text("would it do"),
            text("what asks most of it"),
            text("working"),
            text("price"));
    return draft.results().choices().stream()
        .filter(choice -> choice.separatorId().equals(id))
        .findFirst()
        .map(
            choice ->
                new Block.Table(
                    draft.nameOf(id)
                        + ": sizes of its shape around the smallest that would do, interface"
                        + " mid-vessel",
                    columns,
                    choice.candidates().stream().map(this::sizeRow).toList()));
  }

  private List<String> sizeRow(SeparatorChoice.Candidate size) {
    return List.of(
        size.words(),
        size.enough() ? "yes" : "no",
        size.binds() + " in " + draft.nameOf(size.caseId()),
        draft.mark(size.governs().working()),
        size.cost().map(SeparatorChoice.Cost::words).orElse("not known"));
  }

  private Block drops(String id) {
    List<Block.Column> columns =
        List.of(
            text("case"),
            number(draft.head("smallest water drop out of the oil", Figure.DROP)),
            text("working"),
            number(draft.head("smallest oil drop out of the water", Figure.DROP)),
            text("working"));
    List<List<String>> rows =
        draft.results().cases().stream()
            .flatMap(c -> c.separator(id).map(s -> dropRow(c, s)).stream())
            .toList();
    return new Block.Table(
        draft.nameOf(id) + ": drops that have time to part, as cold as the ground", columns, rows);
  }

  private List<String> dropRow(CaseResult designCase, SeparatorResult result) {
    String what = draft.nameOf(result.separatorId()) + ", " + designCase.designCase().name() + ": ";
    Optional<Draft.Shown> water = drop(what + "smallest water drop", result.waterDrops());
    Optional<Draft.Shown> oil = drop(what + "smallest oil drop", result.oilDrops());
    return List.of(
        designCase.designCase().name(),
        water.map(Draft.Shown::digits).orElse("-"),
        water.map(Draft.Shown::mark).orElse(""),
        oil.map(Draft.Shown::digits).orElse("-"),
        oil.map(Draft.Shown::mark).orElse(""));
  }

  /** Rounded up: what is said to part must part. */
  private Optional<Draft.Shown> drop(String what, Optional<Computed<Length>> drop) {
    return drop.map(d -> draft.headline(what, Figure.DROP, Rounding.UP, d));
  }

  private List<String> row(CaseResult designCase, SeparatorResult result) {
    String what = draft.nameOf(result.separatorId()) + ", " + designCase.designCase().name() + ": ";
    Optional<Draft.Shown> oil = minutes(what + "oil stays", result.oilMinutes());
    Optional<Draft.Shown> water = minutes(what + "water stays", result.waterMinutes());
    Draft.Shown design = draft.headline(what + "design water", Figure.RATE, result.designWater());
    return List.of(
        designCase.designCase().name(),
        draft.digits(Figure.RATE, result.oil()),
        oil.map(Draft.Shown::digits).orElse("-"),
        oil.map(Draft.Shown::mark).orElse(""),
        draft.digits(Figure.RATE, result.water()),
        water.map(Draft.Shown::digits).orElse("-"),
        water.map(Draft.Shown::mark).orElse(""),
        design.digits(),
        design.mark());
  }

  private Optional<Draft.Shown> minutes(String what, Optional<Computed<Time>> minutes) {
    return minutes.map(m -> draft.headline(what, Figure.MINUTES, m));
  }
}
