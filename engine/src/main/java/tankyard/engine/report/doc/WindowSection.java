package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.Rounding;
import tankyard.engine.window.FloatWork;
import tankyard.engine.window.GasBreak;
import tankyard.engine.window.OilLeg;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Setting;
import tankyard.engine.window.Window;

/** The back-pressure window of each separator. */
final class WindowSection {
  private static final String NONE = "";

  private final Draft draft;
  private final Window window;

  private WindowSection(Draft draft, Window window) {
    this.draft = draft;
    this.window = window;
  }

  static List<Section> of(Draft draft) {
    return draft.results().windows().stream()
        .map(w -> new WindowSection(draft, w).section())
        .toList();
  }

  private Section section() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(window.notValid().map(this::notValid).orElseGet(() -> new Block.Words(advice())));
    window
        .most()
        .filter(PressureLimit::beyondAnyGauge)
        .ifPresent(
            m ->
                blocks.add(
                    new Block.Words(
                        "Here "
                            + m.whyNoGauge(Figure.READING.unit(draft.units()))
                            + ", in case \""
                            + draft.nameOf(m.caseId())
                            + "\".")));
    blocks.add(ends());
    blocks.addAll(WindowCases.of(draft, window));
    tankAlone().ifPresent(blocks::add);
    window.oilLeg().ifPresent(leg -> blocks.add(oilLeg(leg)));
    window.least().flatMap(this::band).ifPresent(blocks::add);
    limits("Every limit from below, the highest first", window.needed()).ifPresent(blocks::add);
    List<PressureLimit> near = NearLimits.of(window.allowed(), draft.units());
    limits("Every limit from above, the lowest first", near).ifPresent(blocks::add);
    NearLimits.leftOut(window.allowed(), near, draft.units())
        .ifPresent(words -> blocks.add(new Block.Words(words)));
    window.floatWork().ifPresent(work -> blocks.add(floatWork(work)));
    if (!window.notChecked().isEmpty()) {
      blocks.add(new Block.Words("Not checked, so neither passed nor counted:"));
      blocks.add(new Block.Points(window.notChecked()));
    }
    return new Section("Back-pressure window of " + window.separatorName(), blocks);
  }

  private Block notValid(GasBreak gas) {
    return new Block.Words(
        "NOT VALID: it is worked for a separator full of liquid, and "
            + draft.words(Figure.SHARE, gas.gas().part().value())
            + " of what comes in at "
            + draft.words(Figure.READING, gas.gas().gauge())
            + " is gas. This holds in: "
            + String.join(", ", gas.caseIds().stream().map(draft::nameOf).toList())
            + ". Take the gas off first; see Gas below. No setting is given.");
  }

  private Block floatWork(FloatWork work) {
    String of = window.separatorName() + "'s float: ";
    Draft.Shown halfway = draft.headline(of + "weigh it to", Figure.SCALE, work.halfway());
    Draft.Shown opens =
        draft.headline(of + "pull to open", Figure.PULL, Rounding.DOWN, work.opens());
    Draft.Shown closes =
        draft.headline(of + "pull to close", Figure.PULL, Rounding.DOWN, work.closes());
    String words =
        "The float: halfway between oil and brine its ball weighs "
            + halfway.words()
            + ". As typed it pulls "
            + opens.words()
            + " to open and "
            + closes.words()
            + " to close, at the seat: up to "
            + draft.words(Figure.READING, work.legFull().value())
            + " on the gauge with the water leg full behind the valve, "
            + draft.words(Figure.READING, work.legDrained().value())
            + " with it drained.";
    return new Block.Words(words + work.fresher().map(f -> fresher(of, f)).orElse(""));
  }

  private String fresher(String of, FloatWork.Fresher fresher) {
    Draft.Shown opens =
        draft.headline(
            of + "pull to open in fresher water", Figure.PULL, Rounding.DOWN, fresher.opens());
    return " Should a flood freshen the water to "
        + AmountText.print(fresher.water().typed())
        + ", it pulls "
        + opens.words()
        + " to open, up to "
        + draft.words(Figure.READING, fresher.legFull().value())
        + "; halfway is then "
        + draft.words(Figure.SCALE, fresher.halfway().value())
        + ".";
  }

  private String advice() {
    if (window.setting().isEmpty()) {
      return "No regulator setting works: the gauge must read more than it may, or the room between"
          + " is less than the regulator's build-up of "
          + draft.words(Figure.READING, window.buildUp())
          + ".";
    }
    Setting setting = window.setting().orElseThrow();
    String reads =
        "the gauge then reads "
            + draft.words(Figure.READING, setting.gauge())
            + " with no oil flowing and "
            + draft.words(Figure.READING, setting.gaugeAtFlow())
            + " at full oil flow";
    String to = draft.words(Figure.READING, setting.regulator().value());
    if (!setting.typed()) {
      return "Set the regulator to " + to + ": " + reads + ".";
    }
    String instead =
        window
            .recommended()
            .map(r -> "set it to " + draft.words(Figure.READING, r.regulator().value()))
            .orElse("no setting does");
    return "The regulator is set to "
        + to
        + ": "
        + reads
        + (setting.fits() ? ", which fits the window." : ". That does not fit: " + instead + ".");
  }

  private Block ends() {
    List<List<String>> rows = new ArrayList<>();
    window.least().ifPresent(l -> rows.add(row("least", l)));
    window.advised().ifPresent(s -> rows.add(settingRow(s)));
    window.most().ifPresent(l -> rows.add(row("most", l)));
    return new Block.Table("", columns("gauge reading"), rows);
  }

  private List<Block.Column> columns(String first) {
    return List.of(
        text(first),
        number(draft.head("gauge", Figure.READING)),
        text("set by"),
        text("case"),
        number("lift"),
        number("line loss"),
        number("valve"),
        number("margin"),
        number("working"));
  }

  private List<String> settingRow(Setting setting) {
    Draft.Shown shown =
        draft.headline(
            window.separatorName() + ": regulator setting", Figure.READING, setting.regulator());
    return List.of(
        "set",
        shown.digits(),
        setting.typed() ? "as typed, at the regulator" : "recommended, at the regulator",
        NONE,
        NONE,
        NONE,
        NONE,
        NONE,
        shown.mark());
  }

  private List<String> row(String first, PressureLimit limit) {
    Draft.Shown shown =
        draft.headline(
            window.separatorName() + ": " + limit.nameIn(draft.units()),
            Figure.READING,
            limit.rounding(),
            limit.gauge());
    return cells(first, shown.digits(), limit, shown.mark());
  }

  private List<String> cells(String first, String digits, PressureLimit limit, String mark) {
    return List.of(
        first,
        digits,
        limit.nameIn(draft.units()),
        draft.nameOf(limit.caseId()),
        draft.digits(Figure.PART, limit.lift()),
        draft.digits(Figure.PART, limit.friction()),
        draft.digits(Figure.PART, limit.valve()),
        draft.digits(Figure.PART, limit.margin()),
        mark);
  }

  /** All of them; only the first of each kind has its working in the appendix. */
  private Optional<Block> limits(String title, List<PressureLimit> limits) {
    if (limits.size() < 2) {
      return Optional.empty();
    }
    Set<PressureLimit.Kind> kinds = EnumSet.noneOf(PressureLimit.Kind.class);
    List<List<String>> rows = new ArrayList<>();
    for (PressureLimit limit : limits) {
      boolean first = kinds.add(limit.kind());
      rows.add(first ? row(limit.kind().words(), limit) : plain(limit));
    }
    return Optional.of(new Block.Table(title, columns("kind"), rows));
  }

  private List<String> plain(PressureLimit limit) {
    String digits =
        Figure.READING.digits(limit.gauge().value().si(), draft.units(), limit.rounding());
    return cells(limit.kind().words(), digits, limit, NONE);
  }

  /** What looking at the tank alone would have said, where a hill says otherwise. */
  private Optional<Block> tankAlone() {
    return window
        .tankAlone()
        .filter(tank -> window.least().isPresent() && !tank.equals(window.least().get()))
        .map(
            tank ->
                new Block.Words(
                    "Looking at the tank alone and not at the way there would say "
                        + draft
                            .headline(
                                window.separatorName() + ": the tank alone",
                                Figure.READING,
                                tank.rounding(),
                                tank.gauge())
                            .words()
                        + " at least ("
                        + tank.nameIn(draft.units())
                        + "). The line past the crest runs part full, so its fall pulls nothing."));
  }

  private Block oilLeg(OilLeg leg) {
    String rules =
        leg.regulatorRules()
            ? "less than the setting, so the regulator rules."
            : window.setting().isPresent()
                ? "no less than the setting, so the separator rides there and the regulator does"
                    + " nothing."
                : "and there is no setting to hold against it.";
    return new Block.Words(
        draft.nameOf(leg.lineId())
            + " needs "
            + draft
                .headline(
                    draft.nameOf(leg.lineId()) + ": need at the regulator",
                    Figure.READING,
                    leg.need())
                .words()
            + " at the regulator in case \""
            + draft.nameOf(leg.caseId())
            + "\", "
            + leg.otherSeason().map(this::otherSeason).orElse("")
            + rules);
  }

  private String otherSeason(OilLeg.InCase other) {
    return draft.headline("Oil leg: need in the other season", Figure.READING, other.need()).words()
        + " at most in the other season (\""
        + draft.nameOf(other.caseId())
        + "\"), ";
  }

  private Optional<Block> band(PressureLimit least) {
    return least
        .heightBand()
        .map(
            band ->
                new Block.Words(
                    "The heights are said to be within "
                        + draft.words(
                            Figure.HEIGHT,
                            draft.results().lease().site().heightAccuracy().orElseThrow())
                        + ", so the least may be off by "
                        + draft.words(Figure.READING, band)
                        + " either way for each height it rests on."));
  }
}
