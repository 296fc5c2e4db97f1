package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import tankyard.engine.lease.DumpValve;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Tank;
import tankyard.engine.study.Defaults;
import tankyard.engine.study.GunBarrelCut;
import tankyard.engine.study.GunBarrelResult;
import tankyard.engine.study.InjectionResult;
import tankyard.engine.study.SwitchResult;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.FeetInches;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Rounding;
import tankyard.engine.window.GasBreak;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Setting;
import tankyard.engine.window.Window;
import tankyard.engine.working.Computed;

/** What each thing at the battery is set to, a row each. */
final class SettingRows {
  static final List<Block.Column> COLUMNS =
      List.of(text("what"), text("set to"), text("why"), text("working"));

  private final Draft draft;
  private final List<List<String>> rows = new ArrayList<>();

  SettingRows(Draft draft) {
    this.draft = draft;
  }

  List<List<String>> all() {
    draft.results().lease().separators().stream()
        .filter(s -> s.status().stays())
        .forEach(this::separator);
    draft.results().cases().stream()
        .findFirst()
        .ifPresent(c -> c.gunBarrels().forEach(this::gunBarrel));
    draft.results().lease().tanks().stream().filter(t -> t.status().stays()).forEach(this::tank);
    draft.results().lease().injectionPumps().stream()
        .filter(p -> p.status().stays())
        .forEach(this::pump);
    return List.copyOf(rows);
  }

  private void row(String what, String setTo, String why, String mark) {
    rows.add(List.of(what, setTo, why, mark));
  }

  private void gunBarrel(GunBarrelResult barrel) {
    String name = draft.nameOf(barrel.gunBarrelId());
    GunBarrelCut cut = barrel.cut();
    boolean typed = !cut.stands().value().equals(cut.weir().value());
    Computed<Length> weir = typed ? cut.stands() : cut.cut();
    Draft.Shown shown = draft.headline(name + ": weir set to", Figure.HEIGHT, weir);
    row(
        name + ", weir of the leg",
        FeetInches.print(weir.value()) + " above its bottom",
        "an inch moves the interface "
            + draft.words(Figure.SMALL, cut.interfaceForAnInch().value()),
        shown.mark());
    row(
        name + ", interface",
        draft.words(Figure.HEIGHT, barrel.interfaceAtRest().value()),
        "find it with a thief or the cocks; set the weir by it",
        "");
    row(
        name + ", vent of the leg",
        "open",
        "shut it pulls like a siphon; what it breathes can kill and burn",
        "");
  }

  private void separator(Separator separator) {
    draft.results().windows().stream()
        .filter(w -> w.separatorId().equals(separator.id()))
        .forEach(w -> window(separator, w));
    row(
        separator.name() + ", relief valve",
        separator.relief().map(p -> draft.words(Figure.READING, p)).orElse("not known"),
        separator.relief().isPresent() ? "no valve before or behind it" : "find out before filling",
        "");
    dumpValve(separator);
  }

  private void window(Separator separator, Window window) {
    window
        .notValid()
        .ifPresentOrElse(gas -> gassy(separator, gas), () -> liquidFull(separator, window));
  }

  /** No figure of a window that gas breaks may be screwed into a regulator. */
  private void gassy(Separator separator, GasBreak gas) {
    row(
        separator.name() + ", regulator",
        "no setting given",
        "gas is "
            + draft.words(Figure.SHARE, gas.gas().part().value())
            + " of what comes in: take it off first, and work the window out anew",
        "");
  }

  private void liquidFull(Separator separator, Window window) {
    Optional<Setting> setting = window.setting();
    if (setting.isEmpty()) {
      row(separator.name() + ", regulator", "nothing works", "see the findings on the sheet", "");
    }
    setting.ifPresent(s -> regulator(separator, s));
    window
        .least()
        .ifPresent(
            l ->
                gauge(
                    separator,
                    "gauge never below",
                    l,
                    Rounding.UP,
                    ": below it water stops going"));
    window.most().ifPresent(l -> gauge(separator, "gauge never above", l, Rounding.DOWN, ""));
  }

  private void regulator(Separator separator, Setting setting) {
    Draft.Shown shown =
        draft.headline(
            separator.name() + ": regulator set to", Figure.READING, setting.regulator());
    row(
        separator.name() + ", regulator",
        shown.digits() + " " + shown.unit(),
        (setting.fits() ? "" : "does not fit the window, see the sheet; ")
            + "the gauge then reads "
            + draft.words(Figure.READING, setting.gauge())
            + ", and "
            + draft.words(Figure.READING, setting.gaugeAtFlow())
            + " at full oil flow",
        shown.mark());
  }

  private void gauge(
      Separator separator, String words, PressureLimit limit, Rounding rounding, String what) {
    Draft.Shown shown =
        draft.headline(separator.name() + ": " + words, Figure.READING, rounding, limit.gauge());
    row(
        separator.name() + ", " + words,
        shown.digits() + " " + shown.unit(),
        limit.nameIn(draft.units()) + what,
        shown.mark());
  }

  private void dumpValve(Separator separator) {
    DumpValve valve = separator.dumpValve();
    String travel = AmountText.print(valve.workingTravel().orElse(Defaults.DUMP_TRAVEL).typed());
    row(
        separator.name() + ", dump valve",
        "opens " + travel + " at the design rate",
        "counted on so in the least",
        "");
    if (valve.hasStrainer()) {
      row(
          separator.name() + ", strainer",
          "ahead of the dump valve",
          "clean it with the block valves shut; a full one eats up the setting",
          "");
    }
    if (valve.hasBypass()) {
      row(
          separator.name() + ", bypass",
          "shut",
          "opened by hand, and watched, only while the dump valve is taken apart",
          "");
    }
    valve
        .floatBall()
        .ifPresent(
            ball ->
                row(
                    separator.name() + ", float",
                    AmountText.print(ball.diameter().typed())
                        + " ball weighted to "
                        + AmountText.print(ball.weight().typed()),
                    "sinks in the oil and swims in the brine"
                        + halfway(separator).map(w -> "; halfway is " + w).orElse(""),
                    ""));
  }

  private Optional<String> halfway(Separator separator) {
    return draft.results().windows().stream()
        .filter(window -> window.separatorId().equals(separator.id()))
        .flatMap(window -> window.floatWork().stream())
        .findFirst()
        .map(work -> draft.words(Figure.SCALE, work.halfway().value()));
  }

  private void tank(Tank tank) {
    hardest(
            c -> c.switches().stream().filter(s -> s.tankId().equals(tank.id())),
            Comparator.comparingDouble(s -> s.highest().value().metres()))
        .ifPresent(high -> highSwitch(tank, high));
    tank.ventBore().ifPresent(bore -> vent(tank));
    if (tank.duty() == Tank.Duty.WATER) {
      row(tank.name() + ", pump starts", height(tank.pumpOn()), "a float or switch", "");
      row(tank.name() + ", pump stops", height(tank.pumpOff()), "a float or switch", "");
      row(
          tank.name() + ", low-level cut-out",
          "above the nozzle, under pump stops",
          "stops the pump whatever its float does",
          "");
    }
  }

  private void vent(Tank tank) {
    row(
        tank.name() + ", vent",
        "lets out at " + ounces(tank.ventLifts()) + ", in at " + ounces(tank.ventDraws()),
        "nothing may shut or freeze it; what it breathes can kill and burn",
        "");
  }

  private String ounces(Optional<Pressure> lifts) {
    return lifts.map(p -> draft.words(Figure.OUNCES, p)).orElse("nothing: an open pipe");
  }

  private static String height(Optional<Length> typed) {
    return typed.map(h -> FeetInches.onTape(h, Rounding.NEAREST)).orElse("not chosen");
  }

  private void highSwitch(Tank tank, SwitchResult high) {
    Computed<Length> highest = high.highest();
    Length lower =
        high.height().filter(h -> h.metres() <= highest.value().metres()).orElse(highest.value());
    boolean asBuilt = high.height().filter(h -> h.metres() <= lower.metres()).isPresent();
    String mark = draft.mark(highest.working());
    row(
        tank.name() + ", high switch",
        lower.metres() > 0 ? FeetInches.onTape(lower, Rounding.DOWN) : "no height is low enough",
        asBuilt
            ? "as drawn; may sit up to " + FeetInches.onTape(highest.value(), Rounding.DOWN)
            : "the highest that leaves room for what still comes",
        mark);
  }

  private void pump(InjectionPump pump) {
    row(
        pump.name() + ", rate",
        draft.words(Figure.RATE, pump.rate()),
        "sheaves for this while it runs",
        "");
    row(
        pump.name() + ", relief valve",
        pump.relief().map(p -> draft.words(Figure.HIGH, p)).orElse("not known"),
        "piped to the tank, nothing shut before it; it guards pipe and pump, not the permit",
        "");
    hardest(
            c ->
                c.injections().stream()
                    .filter(i -> i.pumpId().equals(pump.id()) && i.redLine().isPresent()),
            Comparator.comparingDouble(SettingRows::redLinePa))
        .flatMap(InjectionResult::redLine)
        .ifPresent(line -> redLine(pump, line));
  }

  private static double redLinePa(InjectionResult result) {
    return result.redLine().map(l -> l.value().pascals()).orElse(Double.POSITIVE_INFINITY);
  }

  private void redLine(InjectionPump pump, Computed<Pressure> line) {
    Draft.Shown shown =
        draft.headline(pump.name() + ": red line", Figure.HIGH, Rounding.DOWN, line);
    row(
        pump.name() + ", red line on its gauge",
        shown.digits() + " " + shown.unit(),
        "there the wellhead is at its limit: stop the pump",
        shown.mark());
  }

  /** The result of the case that asks most of a setting. */
  private <T> Optional<T> hardest(
      Function<tankyard.engine.study.CaseResult, Stream<T>> of, Comparator<T> byHardness) {
    return draft.results().cases().stream().flatMap(of).min(byHardness);
  }
}
