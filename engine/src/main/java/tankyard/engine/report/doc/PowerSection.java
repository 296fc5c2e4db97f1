package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.study.PoleLoad;
import tankyard.engine.units.Rounding;

/** The load list for the electrician: every motor, its amps, its wire. */
final class PowerSection {
  private PowerSection() {}

  static List<Section> of(Draft draft) {
    List<Block> blocks = new ArrayList<>();
    for (PoleLoad pole : draft.results().yard().power()) {
      blocks.add(table(draft, pole));
      blocks.add(sums(draft, pole));
    }
    if (blocks.isEmpty()) {
      return List.of();
    }
    blocks.add(
        new Block.Words(
            "Wire, breaker, starter, transformer and grounding are for the local electrical code"
                + " and a licensed electrician to decide."));
    return List.of(Section.of("Power", blocks.toArray(Block[]::new)));
  }

  private static Block table(Draft draft, PoleLoad pole) {
    List<List<String>> rows = new ArrayList<>();
    pole.motors().forEach(motor -> rows.add(row(draft, motor)));
    return new Block.Table(
        "Motors nearest to " + draft.nameOf(pole.poleId()),
        List.of(
            text("motor of"),
            number(draft.head("power", Figure.POWER)),
            number(draft.head("runs on", Figure.AMPS)),
            text("working"),
            number(draft.head("starts on", Figure.AMPS)),
            text("wire"),
            number(draft.head("run", Figure.DISTANCE)),
            number(draft.head("lost", Figure.PART_OF)),
            text("working"),
            number(draft.head("starting", Figure.PART_OF))),
        rows);
  }

  private static List<String> row(Draft draft, PoleLoad.Motor motor) {
    String name = draft.nameOf(motor.thingId());
    Draft.Shown running =
        draft.headline(name + ": motor runs on", Figure.AMPS, Rounding.UP, motor.running());
    List<String> row =
        new ArrayList<>(
            List.of(
                name,
                draft.digits(Figure.POWER, motor.power()),
                running.digits(),
                running.mark(),
                draft.digits(Figure.AMPS, motor.starting().value())));
    motor
        .lost()
        .ifPresentOrElse(
            lost -> row.addAll(wire(draft, name, lost)),
            () -> row.addAll(List.of("not known", "", "", "", "")));
    return row;
  }

  private static List<String> wire(Draft draft, String name, PoleLoad.Lost lost) {
    Draft.Shown running =
        draft.headline(
            name + ": voltage lost in its wire", Figure.PART_OF, Rounding.UP, lost.running());
    return List.of(
        lost.wire().words(),
        draft.digits(Figure.DISTANCE, lost.length()),
        running.digits(),
        running.mark(),
        draft.digits(Figure.PART_OF, lost.starting().value()));
  }

  private static Block sums(Draft draft, PoleLoad pole) {
    String name = draft.nameOf(pole.poleId());
    Draft.Shown running =
        draft.headline(name + ": all motors run on", Figure.AMPS, Rounding.UP, pole.running());
    if (pole.motors().size() == 1) {
      return new Block.Words("It is the only motor there.");
    }
    Draft.Shown together =
        draft.headline(
            name + ": all motors start at once on", Figure.AMPS, Rounding.UP, pole.together());
    Draft.Shown staggered =
        draft.headline(
            name + ": one after the other on", Figure.AMPS, Rounding.UP, pole.staggered());
    return new Block.Words(
        "Together they run on "
            + running.words()
            + ". When the power comes back they ask for "
            + together.words()
            + " at once; with a delay of its own on each timer, for "
            + staggered.words()
            + " at most.");
  }
}
