package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.InjectionResult;
import tankyard.engine.units.Rounding;

/** The injection pumps at the rate they run at, and the wells they feed. */
final class InjectionSection {
  private final Draft draft;

  private InjectionSection(Draft draft) {
    this.draft = draft;
  }

  static List<Section> of(Draft draft) {
    InjectionSection section = new InjectionSection(draft);
    List<List<String>> pressures = new ArrayList<>();
    List<List<String>> work = new ArrayList<>();
    for (CaseResult designCase : draft.results().cases()) {
      designCase.injections().forEach(i -> pressures.add(section.pressures(designCase, i)));
      Set<String> told = new HashSet<>();
      designCase.injections().stream()
          .filter(i -> told.add(i.pumpId()))
          .forEach(i -> work.add(section.work(designCase, i)));
    }
    if (pressures.isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Table("Pressures while the pump runs", section.pressureColumns(), pressures));
    blocks.add(new Block.Table("Power and hours", section.workColumns(), work));
    SharedWellTable.of(draft).ifPresent(blocks::add);
    DriveTable.of(draft).ifPresent(blocks::add);
    SuctionTable.of(draft).ifPresent(blocks::add);
    SuctionTable.lowest(draft).ifPresent(blocks::add);
    blocks.add(
        new Block.Words(
            "The permit, or the screening form where none is typed, holds at the wellhead. The red"
                + " line is the pump gauge's reading at which the wellhead is there, with the line"
                + " losses of this rate."));
    return List.of(new Section("Injection", blocks));
  }

  private List<Block.Column> pressureColumns() {
    return List.of(
        text("pump to well"),
        text("case"),
        number(draft.head("into it", Figure.RATE)),
        number(draft.head("wellhead", Figure.HIGH)),
        text("working"),
        number(draft.head("line loss", Figure.READING)),
        number(draft.head("at the pump", Figure.HIGH)),
        text("working"),
        number(draft.head("red line", Figure.HIGH)),
        text("working"));
  }

  private List<Block.Column> workColumns() {
    return List.of(
        text("pump"),
        text("case"),
        number(draft.head("runs at", Figure.RATE)),
        number(draft.head("power", Figure.POWER)),
        text("working"),
        number("hours a day"),
        text("working"));
  }

  private List<String> pressures(CaseResult designCase, InjectionResult result) {
    String what = what(designCase, result);
    Draft.Shown wellhead = draft.headline(what + "wellhead", Figure.HIGH, result.wellhead());
    Draft.Shown pump = draft.headline(what + "at the pump", Figure.HIGH, result.discharge());
    Optional<Draft.Shown> red =
        result.redLine().map(r -> draft.headline(what + "red line", Figure.HIGH, Rounding.DOWN, r));
    return List.of(
        draft.nameOf(result.pumpId()) + " to " + draft.nameOf(result.wellId()),
        designCase.designCase().name(),
        draft.digits(Figure.RATE, result.intoWell()),
        wellhead.digits(),
        wellhead.mark(),
        draft.digits(Figure.READING, result.lineLoss()),
        pump.digits(),
        pump.mark(),
        red.map(Draft.Shown::digits).orElse("no limit known"),
        red.map(Draft.Shown::mark).orElse(""));
  }

  private List<String> work(CaseResult designCase, InjectionResult result) {
    String what = what(designCase, result);
    Draft.Shown power = draft.headline(what + "power", Figure.POWER, result.power());
    Draft.Shown hours = draft.headline(what + "hours a day", Figure.HOURS, result.hours());
    return List.of(
        draft.nameOf(result.pumpId()),
        designCase.designCase().name(),
        draft.digits(Figure.RATE, result.rate()),
        power.digits(),
        power.mark(),
        hours.digits(),
        hours.mark());
  }

  private String what(CaseResult designCase, InjectionResult result) {
    return draft.nameOf(result.pumpId()) + ", " + designCase.designCase().name() + ": ";
  }
}
