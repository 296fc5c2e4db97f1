package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.TreaterResult;
import tankyard.engine.units.Rounding;

/** What it would take to heat the oil before it is sold. */
final class TreaterSection {
  private TreaterSection() {}

  static List<Section> of(Draft draft) {
    List<List<String>> rows = new ArrayList<>();
    for (CaseResult designCase : draft.results().cases()) {
      designCase.treater().ifPresent(t -> rows.add(row(draft, designCase, t)));
    }
    if (rows.isEmpty()) {
      return List.of();
    }
    List<Block.Column> columns =
        List.of(
            text("case"),
            number(draft.head("comes at", Figure.WARMTH)),
            number(draft.head("burner", Figure.HEAT)),
            text("working"),
            number(draft.head("gas", Figure.GAS)),
            text("working"),
            number(draft.head("or propane a month", Figure.FUEL)),
            number(draft.head("a barrel sold", Figure.FUEL_A_BARREL)),
            number(draft.head("with all its water", Figure.HEAT)),
            text("working"));
    return List.of(
        Section.of(
            "Heater-treater, if there were one",
            new Block.Table("Heat and fuel", columns, rows),
            new Block.Words(
                "A barrel of water takes more than twice the heat of one of oil: knock it out first."
                    + " It is fired: its distance from tanks, wells and vents is for the local code"
                    + " and the fire marshal to say.")));
  }

  private static List<String> row(Draft draft, CaseResult designCase, TreaterResult treater) {
    String what = "Treater, " + designCase.designCase().name() + ": ";
    Draft.Shown duty = draft.headline(what + "burner", Figure.HEAT, Rounding.UP, treater.duty());
    Draft.Shown gas = draft.headline(what + "gas", Figure.GAS, Rounding.UP, treater.gas());
    Draft.Shown all =
        draft.headline(
            what + "burner with all the water", Figure.HEAT, Rounding.UP, treater.dutyWithWater());
    Optional<String> barrel =
        treater.propaneABarrel().map(b -> draft.digits(Figure.FUEL_A_BARREL, b.value()));
    return List.of(
        designCase.designCase().name(),
        draft.digits(Figure.WARMTH, treater.from()),
        duty.digits(),
        duty.mark(),
        gas.digits(),
        gas.mark(),
        draft.digits(Figure.FUEL, treater.propane().value()),
        barrel.orElse("-"),
        all.digits(),
        all.mark());
  }
}
