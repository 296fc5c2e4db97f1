package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.List;
import java.util.Optional;
import tankyard.engine.study.PumpDrive;

/** Speed and sheaves of the pumps whose plungers are known. */
final class DriveTable {
  private DriveTable() {}

  static Optional<Block> of(Draft draft) {
    List<List<String>> rows =
        draft.results().yard().drives().stream().map(drive -> row(draft, drive)).toList();
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(new Block.Table("Speed and sheaves", columns(draft), rows));
  }

  private static List<Block.Column> columns(Draft draft) {
    return List.of(
        text("pump"),
        number(draft.head("as typed delivers", Figure.RATE)),
        text("working"),
        number(draft.head("its rate asks for", Figure.TURNS)),
        text("working"),
        number(draft.head("sheave on the motor", Figure.SMALL)),
        text("working"));
  }

  private static List<String> row(Draft draft, PumpDrive drive) {
    String name = draft.nameOf(drive.pumpId());
    Optional<Draft.Shown> delivers =
        drive.delivers().map(d -> draft.headline(name + ": as typed delivers", Figure.RATE, d));
    Draft.Shown speed = draft.headline(name + ": speed for its rate", Figure.TURNS, drive.speed());
    Optional<Draft.Shown> sheave =
        drive.motorSheave().map(s -> draft.headline(name + ": motor's sheave", Figure.SMALL, s));
    return List.of(
        name,
        delivers.map(Draft.Shown::digits).orElse("speed not known"),
        delivers.map(Draft.Shown::mark).orElse(""),
        speed.digits(),
        speed.mark(),
        sheave.map(Draft.Shown::digits).orElse("not known"),
        sheave.map(Draft.Shown::mark).orElse(""));
  }
}
