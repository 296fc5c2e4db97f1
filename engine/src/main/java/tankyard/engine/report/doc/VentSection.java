package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import tankyard.engine.lease.Tank;
import tankyard.engine.study.BreathingResult;
import tankyard.engine.study.CaseResult;
import tankyard.engine.units.GasRate;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Rounding;
import tankyard.engine.working.Computed;

/** What each tank breathes through its vent, each way in the case that breathes hardest. */
final class VentSection {
  private static final String NONE = "-";

  private final Draft draft;
  private final List<List<String>> rows = new ArrayList<>();

  private VentSection(Draft draft) {
    this.draft = draft;
  }

  static List<Section> of(Draft draft) {
    VentSection section = new VentSection(draft);
    draft.results().lease().tanks().forEach(section::tank);
    return section.rows.isEmpty() ? List.of() : List.of(section.section());
  }

  private Section section() {
    List<Block.Column> columns =
        List.of(
            text("tank"),
            text("breathes"),
            number(draft.head("air", Figure.BREATH)),
            text("working"),
            text("case"),
            number(draft.head("across the vent", Figure.OUNCES)),
            text("working"),
            number(draft.head("roof holds", Figure.OUNCES)),
            number(draft.head("bore that is enough", Figure.SMALL)));
    return Section.of(
        "Vents",
        new Block.Table("Each way in the case that breathes hardest", columns, rows),
        new Block.Words(
            "In: the truck's or the injection pumps' draw while the tank cools. Out: filling, the"
                + " heat of the day and the gas that comes in. Fire is left out. The maker's flow"
                + " curve and local code govern the vent. A hatch frozen shut folds a tank. What"
                + " comes out burns, and where there is hydrogen sulphide it kills."));
  }

  private void tank(Tank tank) {
    row(tank, "in", r -> r.in(), r -> r.vacuum(), r -> r.holdsVacuum());
    row(tank, "out", r -> r.out(), r -> r.pressure(), r -> r.holdsPressure());
  }

  private record Hardest(CaseResult in, BreathingResult breathing) {}

  private void row(
      Tank tank,
      String way,
      Function<BreathingResult, Computed<GasRate>> air,
      Function<BreathingResult, Optional<Computed<Pressure>>> across,
      Function<BreathingResult, Optional<Pressure>> holds) {
    hardest(tank, air)
        .ifPresent(
            h -> {
              String name = tank.name() + ", vent: " + way;
              Draft.Shown rate =
                  draft.headline(name, Figure.BREATH, Rounding.UP, air.apply(h.breathing()));
              Optional<Draft.Shown> ounces =
                  across
                      .apply(h.breathing())
                      .map(p -> draft.headline(name + ", across", Figure.OUNCES, Rounding.UP, p));
              rows.add(
                  List.of(
                      tank.name(),
                      way,
                      rate.digits(),
                      rate.mark(),
                      h.in().designCase().name(),
                      ounces.map(Draft.Shown::digits).orElse("bore not known"),
                      ounces.map(Draft.Shown::mark).orElse(""),
                      holds
                          .apply(h.breathing())
                          .map(p -> draft.digits(Figure.OUNCES, p))
                          .orElse(NONE),
                      h.breathing().bore().map(b -> bore(name, b)).orElse("roof not known")));
            });
  }

  private String bore(String name, Computed<Length> bore) {
    return draft.headline(name + ", bore", Figure.SMALL, Rounding.UP, bore).digits();
  }

  private Optional<Hardest> hardest(Tank tank, Function<BreathingResult, Computed<GasRate>> air) {
    return draft.results().cases().stream()
        .flatMap(
            c ->
                c.breathing().stream()
                    .filter(b -> b.tankId().equals(tank.id()))
                    .map(b -> new Hardest(c, b)))
        .max(
            Comparator.comparingDouble(
                h -> air.apply(h.breathing()).value().standardCubicMetresPerSecond()));
  }
}
