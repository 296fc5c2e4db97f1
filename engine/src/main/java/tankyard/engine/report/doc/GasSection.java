package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Line;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.GasInLine;
import tankyard.engine.study.LineResult;
import tankyard.engine.study.SeparatorResult;
import tankyard.engine.study.VesselGas;
import tankyard.engine.units.Rounding;

/** Where gas comes with the liquid: in which lines, and into which separators. */
final class GasSection {
  private static final String NONE = "-";

  private final Draft draft;

  private GasSection(Draft draft) {
    this.draft = draft;
  }

  static List<Section> of(Draft draft) {
    GasSection section = new GasSection(draft);
    List<Block> blocks = new ArrayList<>();
    section.lines().ifPresent(blocks::add);
    section.vessels().ifPresent(blocks::add);
    if (blocks.isEmpty()) {
      return List.of();
    }
    blocks.add(
        new Block.Words(
            "Lines are marched by Beggs and Brill with Payne's factors, in the case in which each"
                + " loses most; speeds and gas are those at the end the flow leaves by. Such laws"
                + " miss by a quarter either way. A separator counts as full of liquid up to "
                + draft.words(Figure.SHARE, VesselGas.MOST)
                + " gas by volume."));
    return List.of(new Section("Gas", blocks));
  }

  private Optional<Block> lines() {
    List<List<String>> rows = new ArrayList<>();
    for (Line line : draft.results().lease().lines()) {
      draft.results().cases().stream()
          .flatMap(c -> c.line(line.id()).stream())
          .filter(r -> r.gas().isPresent())
          .max(Comparator.comparingDouble(r -> r.friction().value().pascals()))
          .ifPresent(r -> rows.add(row(line, r, r.gas().orElseThrow())));
    }
    List<Block.Column> columns =
        List.of(
            text("line"),
            number(draft.head("free gas", Figure.GAS)),
            number(draft.head("gas, of volume", Figure.SHARE)),
            number(draft.head("hold-up", Figure.SHARE)),
            number(draft.head("liquid", Figure.SPEED)),
            number(draft.head("gas", Figure.SPEED)),
            number(draft.head("may wear", Figure.SPEED)),
            number("steps"),
            text("pattern"));
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(new Block.Table("Lines with gas", columns, rows));
  }

  private List<String> row(Line line, LineResult result, GasInLine gas) {
    return List.of(
        line.name(),
        draft.digits(Figure.GAS, gas.free()),
        draft.digits(Figure.SHARE, gas.gasPart()),
        draft.digits(Figure.SHARE, gas.holdUp()),
        draft.digits(Figure.SPEED, gas.liquidSpeed()),
        draft.digits(Figure.SPEED, gas.gasSpeed()),
        gas.wearSpeed().map(w -> draft.digits(Figure.SPEED, w.value())).orElse(NONE),
        Integer.toString(gas.steps()),
        gas.patterns());
  }

  private Optional<Block> vessels() {
    List<List<String>> rows = new ArrayList<>();
    for (CaseResult result : draft.results().cases()) {
      for (SeparatorResult separator : result.separators()) {
        separator.gas().ifPresent(gas -> rows.add(row(result, separator, gas)));
      }
    }
    List<Block.Column> columns =
        List.of(
            text("separator"),
            text("case"),
            number(draft.head("at", Figure.READING)),
            number(draft.head("free gas", Figure.GAS)),
            number(draft.head("gas, of volume", Figure.SHARE)),
            text("working"),
            number(draft.head("gas section, bore", Figure.BORE)),
            text("working"));
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(new Block.Table("Separators with gas", columns, rows));
  }

  private List<String> row(CaseResult result, SeparatorResult separator, VesselGas gas) {
    String what = draft.nameOf(separator.separatorId()) + ", " + result.designCase().name() + ": ";
    Draft.Shown part = draft.headline(what + "gas, of volume", Figure.SHARE, gas.part());
    Draft.Shown section =
        draft.headline(what + "bore of a gas section", Figure.BORE, Rounding.UP, gas.section());
    return List.of(
        draft.nameOf(separator.separatorId()),
        result.designCase().name(),
        draft.digits(Figure.READING, gas.gauge()),
        draft.digits(Figure.GAS, gas.free()),
        part.digits(),
        part.mark(),
        section.digits(),
        section.mark());
  }
}
