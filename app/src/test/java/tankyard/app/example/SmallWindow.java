package tankyard.app.example;

import static tankyard.app.example.SmallAnswer.psi;

import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Pressure;
import tankyard.engine.window.OilLeg;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.PressureLimit.Kind;
import tankyard.engine.window.Setting;
import tankyard.engine.window.Window;

/** Back-pressure windows of the small lease, made up by hand. */
public final class SmallWindow {
  private static final PressureLimit CREST =
      limit(Kind.CREST, "L6", "crest 126 ft out on Line 6", "winter", 10.2, 1.4, 0.9, 2, 0.9);
  private static final PressureLimit CREST_SUMMER =
      limit(Kind.CREST, "L6", "crest 126 ft out on Line 6", "summer", 10.2, 0.9, 0.8, 2, 0.9);
  private static final PressureLimit INLET =
      limit(Kind.TANK_INLET, "WT1", "inlet of Water tank 1", "winter", 7.1, 2.1, 0.9, 2, 0.9);
  private static final PressureLimit BOX =
      at(
          26,
          limit(Kind.STUFFING_BOX, "W3", "Well 3's stuffing box", "winter", -3.9, -0.9, 0, 0, 0.4));
  private static final PressureLimit BOX_TWO =
      at(
          27.4,
          limit(Kind.STUFFING_BOX, "W2", "Well 2's stuffing box", "winter", -3.5, -0.8, 0, 0, 0.4));
  private static final PressureLimit GAUGE =
      at(30, limit(Kind.GAUGE_RANGE, "S1", "range of the gauge", "summer", 0, 0, 0, 0, 0));
  private static final PressureLimit RELIEF =
      at(
          67.5,
          limit(Kind.RELIEF_VALVE, "S1", "90 % of the relief valve", "summer", 0, 0, 0, -7.5, 0));

  private SmallWindow() {}

  public static Window open() {
    return window(
        List.of(CREST, CREST_SUMMER, INLET),
        List.of(BOX, BOX_TWO, GAUGE, RELIEF),
        Optional.of(setting(16, 18.5, true)));
  }

  /** The well's limit lies below what the crest needs. */
  public static Window closed() {
    PressureLimit weak =
        at(
            9.3,
            limit(
                Kind.STUFFING_BOX, "W3", "Well 3's stuffing box", "winter", -3.9, -0.9, 0, 0, 0.4));
    return window(
        List.of(CREST, CREST_SUMMER, INLET),
        List.of(weak, BOX_TWO, GAUGE, RELIEF),
        Optional.empty());
  }

  /** No water leg drawn yet, and no limit known. */
  public static Window unknown() {
    return new Window(
        "S1",
        "Separator 1",
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        List.of("Least: no water leg leads from Separator 1 to a water tank."),
        Pressure.ofPsi(2),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  private static Window window(
      List<PressureLimit> needed, List<PressureLimit> allowed, Optional<Setting> setting) {
    return new Window(
        "S1",
        "Separator 1",
        Optional.of(needed.get(0)),
        Optional.of(allowed.get(0)),
        needed,
        allowed,
        Optional.of(INLET),
        Optional.of(new OilLeg("L5", "winter", psi("Oil leg", 4.2), Optional.empty(), true)),
        List.of("Float pull: the port of the dump valve is not known."),
        Pressure.ofPsi(2),
        setting,
        setting,
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  private static Setting setting(double gauge, double atFlow, boolean fits) {
    return new Setting(
        psi("Regulator setting", gauge - 0.6),
        Pressure.ofPsi(gauge),
        Pressure.ofPsi(atFlow),
        false,
        fits);
  }

  private static PressureLimit limit(
      Kind kind,
      String thing,
      String name,
      String caseId,
      double lift,
      double friction,
      double valve,
      double margin,
      double band) {
    return new PressureLimit(
        kind,
        thing,
        name,
        Optional.empty(),
        caseId,
        psi(name, lift + friction + valve + margin),
        Pressure.ofPsi(lift),
        Pressure.ofPsi(friction),
        Pressure.ofPsi(valve),
        Pressure.ofPsi(margin),
        band == 0 ? Optional.empty() : Optional.of(Pressure.ofPsi(band)));
  }

  private static PressureLimit at(double gauge, PressureLimit limit) {
    return new PressureLimit(
        limit.kind(),
        limit.thingId(),
        limit.name(),
        limit.crest(),
        limit.caseId(),
        psi(limit.name(), gauge),
        limit.lift(),
        limit.friction(),
        limit.valve(),
        limit.margin(),
        limit.heightBand());
  }
}
