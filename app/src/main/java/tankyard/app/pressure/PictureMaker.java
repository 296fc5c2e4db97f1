package tankyard.app.pressure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import tankyard.app.chart.Axis;
import tankyard.app.pressure.WindowPicture.End;
import tankyard.app.pressure.WindowPicture.Mark;
import tankyard.app.pressure.WindowPicture.Part;
import tankyard.app.pressure.WindowPicture.Segment;
import tankyard.app.pressure.WindowPicture.SettingMark;
import tankyard.app.pressure.WindowPicture.State;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.window.OilLeg;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Setting;
import tankyard.engine.window.Window;

/** Turns a window into what is drawn of it. */
final class PictureMaker {
  /** The axis ends a little past the last thing that matters. */
  private static final double ROOM = 1.12;

  private static final int STEPS = 8;

  private final Map<String, String> caseNames;
  private final UnitSystem units;
  private final Rounded rounded;

  /**
   * A maker for one lease.
   *
   * @param caseNames of the design cases, by id
   */
  PictureMaker(UnitSystem units, Map<String, String> caseNames) {
    this.caseNames = Map.copyOf(caseNames);
    this.units = units;
    this.rounded = Rounded.in(units);
  }

  WindowPicture picture(Window window) {
    Optional<End> least = window.least().map(this::end);
    Optional<End> most = window.most().map(this::end);
    List<Segment> segments = window.least().map(this::segments).orElse(List.of());
    Optional<SettingMark> setting = window.advised().map(this::setting);
    List<Mark> marks = marks(window);
    Axis axis = axis(least, most, segments, setting, marks);
    return new WindowPicture(
        window.separatorId(),
        window.separatorName(),
        state(window),
        new Verdict(rounded).of(window),
        rounded.unit().symbol(),
        axis,
        least,
        most,
        segments,
        window.least().map(this::sum).orElse(""),
        setting,
        marks.stream().filter(m -> m.value() <= axis.high()).toList(),
        beyond(marks, axis),
        window.notChecked());
  }

  private static State state(Window window) {
    if (window.least().isEmpty() || window.most().isEmpty()) {
      return State.UNKNOWN;
    }
    if (window.notValid().isPresent()) {
      return State.INVALID;
    }
    return window.open() ? State.OPEN : State.CLOSED;
  }

  private double gauge(PressureLimit limit) {
    return rounded.value(limit.gauge().value());
  }

  private End end(PressureLimit limit) {
    double band = limit.heightBand().map(rounded::value).orElse(0.0);
    return new End(
        gauge(limit),
        rounded.limit(limit),
        limit.nameIn(units),
        caseName(limit),
        band,
        band == 0 ? "" : rounded.near(band),
        limit.thingId(),
        limit.gauge()::working);
  }

  /** Static first: where it is less than nothing, the rest starts below zero. */
  private List<Segment> segments(PressureLimit least) {
    Map<Part, Pressure> parts = new LinkedHashMap<>();
    parts.put(Part.STATIC, least.lift());
    parts.put(Part.FRICTION, least.friction());
    parts.put(Part.VALVE, least.valve());
    parts.put(Part.MARGIN, least.margin());
    List<Segment> segments = new ArrayList<>();
    double at = 0;
    for (Map.Entry<Part, Pressure> part : parts.entrySet()) {
      double size = rounded.value(part.getValue());
      if (size != 0) {
        segments.add(new Segment(part.getKey(), at, at + size, rounded.finer(size)));
      }
      at += size;
    }
    return segments;
  }

  /** The parts as they add up, and what the gauge must then reach. */
  private String sum(PressureLimit least) {
    double exact =
        rounded.value(least.lift())
            + rounded.value(least.friction())
            + rounded.value(least.valve())
            + rounded.value(least.margin());
    return "= "
        + rounded.withUnit(rounded.finer(exact))
        + ", so at least "
        + rounded.withUnit(rounded.limit(least));
  }

  private SettingMark setting(Setting setting) {
    double gauge = rounded.value(setting.gauge());
    double atFlow = rounded.value(setting.gaugeAtFlow());
    String flow = ", " + rounded.near(atFlow) + " at full oil flow";
    return new SettingMark(
        gauge,
        atFlow,
        "reads " + rounded.withUnit(rounded.near(gauge)) + (atFlow > gauge ? flow : ""),
        setting.fits(),
        setting.regulator()::working);
  }

  private List<Mark> marks(Window window) {
    List<Mark> marks = new ArrayList<>();
    window.tankAlone().map(this::tankAlone).ifPresent(marks::add);
    window.oilLeg().map(leg -> oilLeg(leg, window)).ifPresent(marks::add);
    runnersUp(window.needed()).stream()
        .filter(l -> !window.tankAlone().equals(Optional.of(l)))
        .forEach(l -> marks.add(mark(Mark.Kind.LOWER, l)));
    runnersUp(window.allowed()).forEach(l -> marks.add(mark(Mark.Kind.UPPER, l)));
    return marks;
  }

  /** The worst case of each limit but the governing one. */
  private static List<PressureLimit> runnersUp(List<PressureLimit> limits) {
    Map<String, PressureLimit> worst = new LinkedHashMap<>();
    limits.forEach(l -> worst.putIfAbsent(l.kind() + "/" + l.thingId() + "/" + l.name(), l));
    return worst.values().stream().skip(1).toList();
  }

  private Mark mark(Mark.Kind kind, PressureLimit limit) {
    return new Mark(
        kind,
        gauge(limit),
        rounded.limit(limit),
        limit.nameIn(units),
        limit.thingId(),
        limit.gauge()::working);
  }

  private Mark tankAlone(PressureLimit limit) {
    return new Mark(
        Mark.Kind.TANK_ALONE,
        gauge(limit),
        rounded.limit(limit),
        "looking at the tank alone",
        limit.thingId(),
        limit.gauge()::working);
  }

  /** The oil leg's need is at the regulator; the gauge shows it with the oil between the two. */
  private Mark oilLeg(OilLeg leg, Window window) {
    double between =
        window
            .setting()
            .map(s -> rounded.value(s.gauge()) - rounded.value(s.regulator().value()))
            .orElse(0.0);
    double value = rounded.value(leg.need().value()) + between;
    return new Mark(
        Mark.Kind.OIL_LEG,
        value,
        rounded.near(value),
        "the oil leg needs",
        leg.lineId(),
        leg.need()::working);
  }

  private Axis axis(
      Optional<End> least,
      Optional<End> most,
      List<Segment> segments,
      Optional<SettingMark> setting,
      List<Mark> marks) {
    double high =
        Stream.of(
                least.map(End::value).stream(),
                most.map(End::value).stream(),
                setting.map(SettingMark::atFlow).stream(),
                marks.stream().filter(m -> m.kind() != Mark.Kind.UPPER).map(Mark::value))
            .flatMap(s -> s)
            .mapToDouble(Double::doubleValue)
            .max()
            .orElse(rounded.value(Pressure.ofPsi(30)));
    double low =
        DoubleStream.concat(
                DoubleStream.of(0),
                segments.stream().flatMapToDouble(s -> DoubleStream.of(s.from(), s.to())))
            .min()
            .orElse(0);
    return Axis.holding(low, high * ROOM, STEPS);
  }

  private List<String> beyond(List<Mark> marks, Axis axis) {
    return marks.stream()
        .filter(m -> m.value() > axis.high())
        .map(m -> m.name() + " " + rounded.withUnit(m.digits()))
        .toList();
  }

  private String caseName(PressureLimit limit) {
    return caseNames.getOrDefault(limit.caseId(), limit.caseId());
  }
}
