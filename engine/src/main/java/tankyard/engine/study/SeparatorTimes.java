package tankyard.engine.study;

import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Separator;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.vessels.EllipsoidalHead;
import tankyard.engine.vessels.Head;
import tankyard.engine.vessels.LyingVessel;
import tankyard.engine.vessels.StandingVessel;
import tankyard.engine.vessels.Vessel;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** How long a separator holds its oil and its water. Heads are taken as 2:1 ellipsoidal. */
final class SeparatorTimes {
  private SeparatorTimes() {}

  static SeparatorResult of(CaseStudy study, Separator separator, double gaugePa) {
    Layers layers = layers(study, separator);
    return new SeparatorResult(
        separator.id(),
        layers.oilRate(),
        layers.waterRate(),
        layers.oil(),
        layers.water().value(),
        layers.oilMinutes(),
        layers.waterMinutes(),
        layers.drops().water(),
        layers.drops().oil(),
        study.designWater(separator),
        VesselGas.of(study, separator, gaugePa));
  }

  /** What stands above and below the interface, how long, and what parts meanwhile. */
  record Layers(
      LiquidRate oilRate,
      LiquidRate waterRate,
      Volume oil,
      Computed<Volume> water,
      Optional<Computed<Time>> oilMinutes,
      Optional<Computed<Time>> waterMinutes,
      SettledDrops drops) {}

  static Layers layers(CaseStudy study, Separator separator) {
    return layers(
        study,
        separator,
        CaseStudy.barrels(study.oilInto(separator)),
        CaseStudy.barrels(study.waterInto(separator)));
  }

  /** For rates that are known already. */
  static Layers layers(CaseStudy study, Separator separator, LiquidRate oil, LiquidRate water) {
    Vessel vessel = vessel(separator);
    Length level = level(separator, vessel);
    Computed<Volume> below = vessel.below(level);
    double oilBarrels = Unit.BARREL.fromSi(vessel.fullM3()) - below.value().toBarrels();
    Volume oilVolume = Volume.ofBarrels(Math.max(0, oilBarrels));
    Optional<Computed<Time>> oilMinutes = minutes(oilVolume, oil, "oil", below);
    Optional<Computed<Time>> waterMinutes = minutes(below.value(), water, "water", below);
    return new Layers(
        oil,
        water,
        oilVolume,
        below,
        oilMinutes,
        waterMinutes,
        SettledDrops.of(
            study, vessel.heightM() - level.metres(), oilMinutes, level.metres(), waterMinutes));
  }

  static Vessel vessel(Separator separator) {
    double radius = separator.diameter().metres() / 2;
    Head head = new EllipsoidalHead(radius, radius / 2);
    return separator.shape() == Separator.Shape.HORIZONTAL
        ? new LyingVessel(radius, separator.length().metres(), head)
        : new StandingVessel(radius, separator.length().metres(), head);
  }

  /**
   * The interface above the lowest inside point; mid-vessel where the shell's height is unknown.
   */
  static Length level(Separator separator, Vessel vessel) {
    double metres =
        separator
            .bottomHeight()
            .map(bottom -> separator.interfaceHeight().metres() - bottom.metres())
            .orElse(vessel.heightM() / 2);
    double inside = Math.min(vessel.heightM(), Math.max(0, metres));
    return Length.ofFeet(Unit.FOOT.fromSi(inside));
  }

  private static Optional<Computed<Time>> minutes(
      Volume layer, LiquidRate rate, String what, Computed<Volume> below) {
    if (rate.toBarrelsPerDay() == 0) {
      return Optional.empty();
    }
    return Optional.of(
        Computed.of(
            Time.ofMinutes(1440 * layer.toBarrels() / rate.toBarrelsPerDay()),
            () ->
                Working.of(
                        "Minutes the " + what + " stays",
                        "t",
                        "1440*V/Q",
                        Unit.MINUTE,
                        Source.definition("volume over rate; heads taken as 2:1 ellipsoidal"),
                        Term.of("V", "volume of its layer", layer, Unit.BARREL),
                        Term.of("Q", "rate into the vessel", rate, Unit.BARREL_PER_DAY))
                    .from(List.of(below.working()))));
  }
}
