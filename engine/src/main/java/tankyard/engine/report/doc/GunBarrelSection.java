package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.GunBarrelCut;
import tankyard.engine.study.GunBarrelResult;
import tankyard.engine.units.FeetInches;
import tankyard.engine.units.Length;
import tankyard.engine.units.Rounding;
import tankyard.engine.working.Computed;

/** Each gun barrel: where to cut its weir, how touchy it is, what the surge does, does it run. */
final class GunBarrelSection {
  private final Draft draft;
  private final String name;

  private GunBarrelSection(Draft draft, String name) {
    this.draft = draft;
    this.name = name;
  }

  static List<Section> of(Draft draft) {
    List<Block> blocks = new ArrayList<>();
    draft.results().cases().stream()
        .findFirst()
        .ifPresent(
            first ->
                first
                    .gunBarrels()
                    .forEach(
                        g ->
                            blocks.addAll(
                                new GunBarrelSection(draft, draft.nameOf(g.gunBarrelId()))
                                    .blocks(g))));
    return blocks.isEmpty() ? List.of() : List.of(new Section("Gun barrel", blocks));
  }

  private List<Block> blocks(GunBarrelResult first) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(weir(first.cut()));
    blocks.add(drifts(first.cut()));
    GunBarrelCaseTables tables = new GunBarrelCaseTables(draft, name, first.gunBarrelId());
    blocks.add(tables.surge());
    blocks.add(tables.holds());
    blocks.addAll(tables.falls());
    String id = first.gunBarrelId();
    worst(id).ifPresent(worst -> blocks.add(sizes(worst, worst.gunBarrel(id).orElseThrow())));
    blocks.add(wells(first));
    return blocks;
  }

  private Block weir(GunBarrelCut cut) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(height("weir for the interface wanted", cut.weir()));
    rows.add(height("cut it at", cut.cut()));
    rows.add(height("the interface stands then at", cut.interfaceAtCut()));
    if (!cut.stands().value().equals(cut.weir().value())) {
      rows.add(height("weir as typed", cut.stands()));
      rows.add(height("the interface stands with that at", cut.interfaceHeight()));
    }
    rows.add(height("an inch of weir moves the interface", cut.interfaceForAnInch()));
    rows.add(height("the weir must be set up or down by", cut.nippleNeeded()));
    return new Block.Table(
        name + ": the weir of its leg, above its bottom",
        List.of(
            text("what"), number(draft.head("height", Figure.HEIGHT)), text("as taped"), text("")),
        rows);
  }

  private List<String> height(String what, Computed<Length> height) {
    Draft.Shown shown = draft.headline(name + ": " + what, Figure.HEIGHT, height);
    return List.of(what, shown.digits(), FeetInches.print(height.value()), shown.mark());
  }

  private Block drifts(GunBarrelCut cut) {
    List<List<String>> rows = new ArrayList<>();
    for (GunBarrelCut.Drift drift : cut.drifts()) {
      String what = name + ", " + drift.liquids() + ": ";
      Draft.Shown goes = draft.headline(what + "interface", Figure.HEIGHT, drift.interfaceHeight());
      Draft.Shown weir = draft.headline(what + "weir", Figure.HEIGHT, drift.weir());
      rows.add(List.of(drift.liquids(), goes.digits(), goes.mark(), weir.digits(), weir.mark()));
    }
    return new Block.Table(
        name + ": with other liquids and the weir left as it is",
        List.of(
            text("liquids"),
            number(draft.head("interface goes to", Figure.HEIGHT)),
            text("working"),
            number(draft.head("weir that would hold it", Figure.HEIGHT)),
            text("working")),
        rows);
  }

  private Optional<CaseResult> worst(String id) {
    return draft.results().cases().stream()
        .filter(c -> c.gunBarrel(id).flatMap(GunBarrelResult::leg).isPresent())
        .max(
            Comparator.comparingDouble(
                c -> c.gunBarrel(id).orElseThrow().leg().orElseThrow().loss().value().metres()));
  }

  private Block sizes(CaseResult designCase, GunBarrelResult barrel) {
    List<List<String>> rows = new ArrayList<>();
    for (GunBarrelResult.Size size : barrel.leg().orElseThrow().sizes()) {
      String what = name + " in " + size.name() + ": ";
      Draft.Shown loss = draft.headline(what + "leg loses", Figure.SMALL, size.loss());
      Draft.Shown goes = draft.headline(what + "interface", Figure.HEIGHT, size.interfaceHeight());
      Draft.Shown down =
          draft.headline(what + "downcomer", Figure.RATE, Rounding.DOWN, size.downcomer());
      List<String> row = new ArrayList<>();
      row.addAll(List.of(size.name(), loss.digits(), loss.mark(), goes.digits(), goes.mark()));
      row.addAll(List.of(down.digits(), down.mark()));
      row.addAll(
          size.lineLoss()
              .map(l -> draft.headline(what + "way to the tank loses", Figure.SMALL, l))
              .map(s -> List.of(s.digits(), s.mark()))
              .orElse(List.of("-", "")));
      rows.add(row);
    }
    return new Block.Table(
        name
            + ": the pipe as drawn and the next sizes, at "
            + draft.words(Figure.RATE, barrel.surge().value())
            + " in "
            + designCase.designCase().name(),
        List.of(
            text("pipe"),
            number(draft.head("leg loses", Figure.SMALL)),
            text(""),
            number(draft.head("interface at", Figure.HEIGHT)),
            text(""),
            number(draft.head("downcomer swallows", Figure.RATE)),
            text(""),
            number(draft.head("to the tank loses", Figure.SMALL)),
            text("")),
        rows);
  }

  private Block wells(GunBarrelResult first) {
    Draft.Shown bottom =
        draft.headline(name + ": weight at its bottom", Figure.READING, first.atBottom());
    Draft.Shown onWells =
        draft.headline(name + ": on a well on its ground", Figure.READING, first.onWells());
    return new Block.Words(
        "The liquid inside weighs "
            + bottom.words()
            + " at the bottom. A well on the same ground feels "
            + onWells.words()
            + " before line loss. Nothing can raise that or lower it: there is no regulator.");
  }
}
