package tankyard.app.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.app.edit.Naming;
import tankyard.app.figures.CaseFigures;
import tankyard.app.figures.CaseTable;
import tankyard.app.figures.Digits;
import tankyard.app.figures.FigureRow;
import tankyard.app.figures.FigureSet;
import tankyard.app.figures.LineRows;
import tankyard.app.figures.ResultRows;
import tankyard.app.figures.TankRows;
import tankyard.app.sheet.SheetResults.Notice;
import tankyard.app.sheet.SheetResults.WorkedFact;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Well;
import tankyard.engine.report.doc.Figure;
import tankyard.engine.study.BermResult;
import tankyard.engine.study.Clearance;
import tankyard.engine.study.SeparatorChoice;
import tankyard.engine.study.Setback;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Setting;
import tankyard.engine.window.Window;
import tankyard.engine.working.Computed;

/** Picks from an answer what concerns one thing, one line or the lease. */
final class ResultsMaker {
  private final CaseFigures figures;
  private final LeaseAnswer answer;

  ResultsMaker(CaseFigures figures) {
    this.figures = figures;
    this.answer = figures.answer();
  }

  SheetResults results(List<String> ids) {
    if (ids.size() > 1) {
      return SheetResults.none();
    }
    String id = ids.isEmpty() ? "" : ids.get(0);
    return new SheetResults(notices(id), facts(id), table(id), assumed(id));
  }

  private List<Notice> notices(String id) {
    return answer.findings().stream()
        .filter(f -> f.thingId().equals(id))
        .map(f -> new Notice(f.severity().words(), f.words()))
        .distinct()
        .toList();
  }

  private List<String> assumed(String id) {
    return answer.assumptions().stream()
        .filter(a -> a.thingId().equals(id))
        .map(a -> a.words())
        .toList();
  }

  private CaseTable table(String id) {
    List<FigureRow> rows = rows(id);
    return rows.isEmpty()
        ? CaseTable.empty()
        : new CaseTable(figures.columns(), List.of(new FigureSet("", "", rows)));
  }

  private List<FigureRow> rows(String id) {
    Lease lease = answer.lease();
    ResultRows all = new ResultRows(figures);
    TankRows tanks = new TankRows(figures);
    Optional<Thing> thing = lease.thing(id);
    if (thing.isPresent()) {
      return rows(thing.get(), all, tanks);
    }
    if (id.isEmpty()) {
      return all.treater();
    }
    return lease
        .line(id)
        .map(
            line ->
                line.service() == Service.OVERFLOW ? tanks.overflow(id) : LineRows.of(figures, id))
        .orElse(List.of());
  }

  private static List<FigureRow> rows(Thing thing, ResultRows all, TankRows tanks) {
    if (thing instanceof Well) {
      return all.well(thing.id());
    }
    if (thing instanceof Separator) {
      return all.separator(thing.id());
    }
    if (thing instanceof GunBarrel) {
      return all.gunBarrel(thing.id());
    }
    if (thing instanceof Tank tank) {
      return tank.duty() == Tank.Duty.OIL ? tanks.oilStorage() : tanks.waterStorage();
    }
    if (thing instanceof InjectionPump) {
      return Stream.concat(all.pump(thing.id()).stream(), all.suction(thing.id()).stream())
          .toList();
    }
    if (thing instanceof InjectionWell) {
      return Stream.concat(
              all.injectionWell(thing.id()).stream(), all.sharedWell(thing.id()).stream())
          .toList();
    }
    return List.of();
  }

  private List<WorkedFact> facts(String id) {
    List<WorkedFact> facts = new ArrayList<>();
    answer.window(id).ifPresent(window -> facts.addAll(facts(window)));
    answer.cases().stream()
        .findFirst()
        .flatMap(c -> c.gunBarrel(id))
        .ifPresent(g -> facts.addAll(GunBarrelFacts.of(g.cut(), figures.units())));
    answer.choices().stream()
        .filter(choice -> choice.separatorId().equals(id))
        .forEach(choice -> facts.addAll(facts(choice)));
    answer.yard().drives().stream()
        .filter(drive -> drive.pumpId().equals(id))
        .forEach(drive -> facts.addAll(DriveFacts.of(drive, figures.units())));
    facts.addAll(PowerFacts.of(answer.yard().power(), id, figures.units()));
    Clearance.of(answer.lease()).stream()
        .filter(c -> c.from().equals(id))
        .map(this::clear)
        .forEach(facts::add);
    answer.yard().berms().stream()
        .filter(berm -> berm.bermId().equals(id))
        .forEach(berm -> facts.addAll(facts(berm)));
    answer.yard().setbacks().stream()
        .filter(setback -> setback.landmarkId().equals(id))
        .map(this::clear)
        .forEach(facts::add);
    if (id.isEmpty()) {
      facts.add(bill());
    }
    return facts;
  }

  private List<WorkedFact> facts(Window window) {
    List<WorkedFact> facts = new ArrayList<>();
    window
        .least()
        .ifPresent(l -> facts.add(limit("Least on the gauge", l, "What must be reached.")));
    window
        .most()
        .ifPresent(m -> facts.add(limit("Most on the gauge", m, "What must not be passed.")));
    window.advised().ifPresent(s -> facts.add(setting(s)));
    window.floatWork().ifPresent(w -> facts.addAll(FloatFacts.of(w, figures.units())));
    return facts;
  }

  private WorkedFact limit(String label, PressureLimit limit, String why) {
    return new WorkedFact(
        label,
        shown(limit.gauge(), limit.rounding()) + ", " + limit.nameIn(figures.units()),
        why,
        limit.gauge()::working);
  }

  private WorkedFact setting(Setting setting) {
    String label = setting.typed() ? "Set at the regulator" : "Recommended setting";
    String fits = setting.fits() ? "" : ", not in the window";
    return new WorkedFact(
        label,
        shown(setting.regulator()) + fits,
        "What to screw the regulator to.",
        setting.regulator()::working);
  }

  /** The smallest that would do and those after it, or the largest there is where none would. */
  private List<WorkedFact> facts(SeparatorChoice choice) {
    List<WorkedFact> facts = new ArrayList<>();
    for (SeparatorChoice.Candidate size : choice.candidates()) {
      boolean pick = choice.pick().filter(size::equals).isPresent();
      boolean cheapest = choice.cheapest().filter(size::equals).isPresent();
      String label =
          pick
              ? "Smallest that will do"
              : cheapest ? "Cheapest that will do" : size.enough() ? "Will do too" : "Will not do";
      facts.add(
          new WorkedFact(
              label,
              size.words() + size.cost().map(c -> ", " + c.words()).orElse(""),
              "Interface mid-vessel: " + size.binds() + " in " + name(size.caseId()) + ".",
              size.governs()::working));
    }
    return facts;
  }

  private String name(String caseId) {
    return answer.designCase(caseId).map(c -> c.designCase().name()).orElse(caseId);
  }

  private List<WorkedFact> facts(BermResult berm) {
    return List.of(
        new WorkedFact(
            "Must be",
            shown(berm.needed(), Rounding.UP)
                + " high, for "
                + Naming.of(answer.lease(), berm.largestTankId()),
            "The largest tank, the rain and the freeboard. Local rules decide.",
            berm.needed()::working),
        new WorkedFact(
            "Dirt in it",
            Figure.DIRT.words(berm.dirt().value(), figures.units(), Rounding.UP),
            "Settled: as high as it is drawn, else as it is to build.",
            berm.dirt()::working));
  }

  private WorkedFact clear(Setback setback) {
    return new WorkedFact(
        "Nearest of the battery",
        shown(setback.clear(), Rounding.DOWN) + " away, " + Naming.of(answer.lease(), setback.to()),
        "From its shell to the nearest side. Exceptions are for the local rule to say.",
        setback.clear()::working);
  }

  private WorkedFact clear(Clearance clearance) {
    return new WorkedFact(
        "Nearest " + clearance.kind().words(),
        shown(clearance.clear(), Rounding.DOWN)
            + " clear, "
            + Naming.of(answer.lease(), clearance.to()),
        "From shell to shell as drawn. How far it must be is for the local code to say.",
        clearance.clear()::working);
  }

  private WorkedFact bill() {
    var totals = answer.bill().totals();
    return new WorkedFact(
        "Bill", totals.words(), "Goods, work, contingency and tax.", totals::working);
  }

  private String shown(Computed<? extends Quantity> computed) {
    return shown(computed, Rounding.NEAREST);
  }

  private String shown(Computed<? extends Quantity> computed, Rounding rounding) {
    Quantity value = computed.value();
    Unit unit = figures.units().unit(value.dimension());
    return Digits.withUnit(unit, value.in(unit), rounding);
  }
}
