package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.GunBarrelFall;
import tankyard.engine.study.GunBarrelResult;
import tankyard.engine.units.Rounding;
import tankyard.engine.working.Computed;

/** What one gun barrel does, case by case. */
final class GunBarrelCaseTables {
  private final Draft draft;
  private final String name;
  private final String id;

  GunBarrelCaseTables(Draft draft, String name, String id) {
    this.draft = draft;
    this.name = name;
    this.id = id;
  }

  /** One column: a number of a case, with its working beside it. */
  private record Part(
      String head,
      Figure figure,
      Rounding rounding,
      Function<GunBarrelResult, Optional<? extends Computed<?>>> number) {
    static Part of(
        String head,
        Figure figure,
        Function<GunBarrelResult, Optional<? extends Computed<?>>> number) {
      return new Part(head, figure, Rounding.NEAREST, number);
    }

    Part down() {
      return new Part(head, figure, Rounding.DOWN, number);
    }
  }

  Block surge() {
    return table(
        "what the surge does to the interface",
        List.of(
            Part.of("surge", Figure.RATE, g -> Optional.of(g.surge())),
            Part.of("interface at rest", Figure.HEIGHT, g -> Optional.of(g.interfaceAtRest())),
            Part.of("leg loses", Figure.SMALL, g -> g.leg().map(l -> l.loss())),
            Part.of("interface then", Figure.HEIGHT, g -> g.leg().map(l -> l.interfaceHeight()))));
  }

  Block holds() {
    return table(
        "what it passes and how long it holds",
        List.of(
            Part.of("leg passes", Figure.RATE, g -> g.leg().map(l -> l.most())).down(),
            Part.of("downcomer swallows", Figure.RATE, g -> g.leg().map(l -> l.downcomer())).down(),
            Part.of("oil stays", Figure.DAYS, GunBarrelResult::oilStays),
            Part.of("water stays", Figure.HOURS, GunBarrelResult::waterStays)));
  }

  private Block table(String title, List<Part> parts) {
    List<Block.Column> heads = new ArrayList<>();
    heads.add(text("case"));
    for (Part part : parts) {
      heads.add(number(draft.head(part.head(), part.figure())));
      heads.add(text(""));
    }
    List<List<String>> rows = new ArrayList<>();
    for (CaseResult designCase : draft.results().cases()) {
      designCase.gunBarrel(id).ifPresent(g -> rows.add(row(designCase, g, parts)));
    }
    return new Block.Table(name + ": " + title, heads, rows);
  }

  private List<String> row(CaseResult designCase, GunBarrelResult barrel, List<Part> parts) {
    List<String> row = new ArrayList<>();
    row.add(designCase.designCase().name());
    for (Part part : parts) {
      String what = name + ", " + designCase.designCase().name() + ": " + part.head();
      row.addAll(
          part.number()
              .apply(barrel)
              .map(n -> draft.headline(what, part.figure(), part.rounding(), n))
              .map(s -> List.of(s.digits(), s.mark()))
              .orElse(List.of("-", "")));
    }
    return row;
  }

  /** Does the water run, does the oil; empty where no line leads on. */
  List<Block> falls() {
    List<List<String>> rows = new ArrayList<>();
    for (CaseResult designCase : draft.results().cases()) {
      designCase
          .gunBarrel(id)
          .ifPresent(g -> g.falls().forEach(f -> rows.add(fall(designCase, f))));
    }
    return rows.isEmpty()
        ? List.of()
        : List.of(
            new Block.Table(
                name + ": does it run by itself? Heights above its bottom",
                List.of(
                    text("line"),
                    text("case"),
                    number(draft.head("rate", Figure.RATE)),
                    number(draft.head("loses", Figure.SMALL)),
                    text(""),
                    number(draft.head("backs up to", Figure.HEIGHT)),
                    text(""),
                    number(draft.head("to spare", Figure.HEIGHT)),
                    text(""),
                    text("runs")),
                rows));
  }

  private List<String> fall(CaseResult designCase, GunBarrelFall fall) {
    String what = draft.nameOf(fall.lineId()) + ", " + designCase.designCase().name() + ": ";
    Draft.Shown loss = draft.headline(what + "loses", Figure.SMALL, fall.loss());
    Draft.Shown stands = draft.headline(what + "backs up to", Figure.HEIGHT, fall.stands());
    Draft.Shown spare =
        draft.headline(what + "to spare", Figure.HEIGHT, Rounding.DOWN, fall.spare());
    return List.of(
        draft.nameOf(fall.lineId()),
        designCase.designCase().name(),
        draft.digits(Figure.RATE, fall.rate()),
        loss.digits(),
        loss.mark(),
        stands.digits(),
        stands.mark(),
        spare.digits(),
        spare.mark(),
        fall.spare().value().metres() < 0 ? "no" : "yes");
  }
}
