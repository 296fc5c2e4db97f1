package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.cures.TankLevels;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Rounding;

/** The least by the level in the water tank. */
final class LevelBlocks {
  private final Draft draft;
  private final TankLevels tank;

  private LevelBlocks(Draft draft, TankLevels tank) {
    this.draft = draft;
    this.tank = tank;
  }

  /** One sentence where something on the way asks for more than the tank at any level. */
  static List<Block> of(Draft draft, TankLevels tank) {
    LevelBlocks blocks = new LevelBlocks(draft, tank);
    return tank.heldOnTheWay()
        ? List.of(new Block.Words(blocks.held()))
        : List.of(blocks.table(), new Block.Words(blocks.words()));
  }

  private String held() {
    return "The level in "
        + tank.tankName()
        + " does not count, filled from below or over its top: "
        + tank.onTheWay().orElseThrow()
        + " asks for "
        + least(tank.asDrawn())
        + " whatever stands in the tank.";
  }

  private Block table() {
    List<List<String>> rows = new ArrayList<>();
    for (TankLevels.AtLevel at : tank.levels()) {
      rows.add(
          List.of(
              at.words(),
              draft.digits(Figure.HEIGHT, at.level()),
              Figure.READING.digits(at.gauge().si(), draft.units(), Rounding.UP),
              at.crest() ? tank.onTheWay().orElseThrow() : "the tank"));
    }
    return new Block.Table(
        "Least gauge reading by the level in " + tank.tankName() + ", filled from below",
        List.of(
            text("tank"),
            number(draft.head("level", Figure.HEIGHT)),
            number(draft.head("least", Figure.READING)),
            text("set by")),
        rows);
  }

  private String words() {
    return tank.drawnSo()
        ? "The window counts the tank full. Without its check valve it runs back through the leg."
        : "As it is drawn, filled over its top, it asks for "
            + least(tank.asDrawn())
            + " at any level. Filled from below it needs a check valve.";
  }

  private String least(Pressure pressure) {
    return Figure.READING.words(pressure, draft.units(), Rounding.UP);
  }
}
