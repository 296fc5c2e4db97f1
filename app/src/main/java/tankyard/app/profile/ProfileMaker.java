package tankyard.app.profile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import tankyard.app.chart.Axis;
import tankyard.app.figures.Digits;
import tankyard.app.profile.ProfilePicture.Crest;
import tankyard.app.profile.ProfilePicture.GasAt;
import tankyard.app.profile.ProfilePicture.Spot;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Thing;
import tankyard.engine.study.LineResult;
import tankyard.engine.study.PipePoint;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;

/** Turns a line's result into what is drawn of it. */
final class ProfileMaker {
  /** Fresh water at 60 degF, kg/m3, which specific gravities are against. */
  private static final double WATER = 999.016;

  private static final double GRAVITY = 9.80665;
  private static final int STEPS_ACROSS = 9;
  private static final int STEPS_UP = 5;

  /** A head much higher than the ground is rough would squash the ground to a line. */
  private static final double MOST_HEAD_OVER_RELIEF = 8;

  /** However flat the ground is, this much head is drawn, m. */
  private static final double HEAD_ALWAYS_DRAWN = 45;

  private final Lease lease;
  private final Unit length;
  private final Unit elevation;
  private final Unit pressure;

  ProfileMaker(Lease lease, UnitSystem units) {
    this.lease = lease;
    this.length = units.unit(Dimension.LENGTH);
    this.elevation = units.unit(Dimension.ELEVATION);
    this.pressure = units.unit(Dimension.PRESSURE);
  }

  /** Empty where there are no two points to draw between. */
  Optional<ProfilePicture> picture(Line line, LineResult result) {
    if (result.points().size() < 2) {
      return Optional.empty();
    }
    Gravity liquid =
        line.service() == Service.OIL_LEG ? lease.fluids().oil() : lease.fluids().brine();
    boolean hasHead = isHeadDrawable(result, liquid);
    PartFullStretches partFull =
        new PartFullStretches(
            result.points().stream().map(p -> spot(p, hasHead ? liquid : null)).toList(),
            result.partFull().stream()
                .map(s -> new ProfilePicture.Stretch(s.from().in(length), s.to().in(length)))
                .toList());
    List<Spot> spots = partFull.spots();
    return Optional.of(
        new ProfilePicture(
            line.id(),
            line.name(),
            name(line.from()),
            name(line.to()),
            Axis.holding(0, spots.get(spots.size() - 1).distance(), STEPS_ACROSS),
            up(spots),
            length.symbol(),
            pressure.symbol(),
            spots,
            partFull.stretches(),
            result.crest().map(c -> crest(c, spots)),
            gas(result),
            hasHead,
            headWords(line, liquid, result, hasHead)));
  }

  private List<GasAt> gas(LineResult result) {
    List<GasAt> found = new ArrayList<>();
    for (PipePoint point : result.points()) {
      point
          .gas()
          .ifPresent(
              g ->
                  found.add(
                      new GasAt(
                          point.distance().in(length),
                          "hold-up "
                              + Figures.decimals(100 * g.holdUp().ratio(), 0)
                              + " %, gas "
                              + Figures.decimals(100 * g.gasPart().ratio(), 0)
                              + " % of the flow, "
                              + g.pattern())));
    }
    return found;
  }

  private static double headMetres(double pascals, Gravity liquid) {
    return pascals / (liquid.specific() * WATER * GRAVITY);
  }

  private static boolean isHeadDrawable(LineResult result, Gravity liquid) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (PipePoint point : result.points()) {
      low = Math.min(low, point.pipe().metres());
      high = Math.max(high, point.ground().metres());
    }
    double most = headMetres(result.highest().pascals(), liquid);
    return most <= Math.max(HEAD_ALWAYS_DRAWN, MOST_HEAD_OVER_RELIEF * (high - low));
  }

  private Spot spot(PipePoint point, Gravity liquid) {
    double head =
        liquid == null || point.partFull() ? 0 : headMetres(point.pressure().pascals(), liquid);
    return new Spot(
        point.distance().in(length),
        point.ground().in(elevation),
        point.pipe().in(elevation),
        elevation.fromSi(point.pipe().metres() + head),
        point.pressure().in(pressure),
        point.partFull());
  }

  private static Axis up(List<Spot> spots) {
    double low =
        spots.stream().flatMapToDouble(s -> DoubleStream.of(s.ground(), s.pipe())).min().orElse(0);
    double high =
        spots.stream()
            .flatMapToDouble(s -> DoubleStream.of(s.ground(), s.pipe(), s.head()))
            .max()
            .orElse(1);
    double room = 0.06 * Math.max(high - low, 1);
    return Axis.holding(low - room, high + room, STEPS_UP);
  }

  /** The crest is named by its distance on the map; the sign stands on the pipe's own point. */
  private Crest crest(LineResult.Crest crest, List<Spot> spots) {
    double distance = crest.distance().in(length);
    double pipe = crest.pipe().in(elevation);
    Spot on =
        spots.stream()
            .min(
                Comparator.comparingDouble(
                    s -> Math.abs(s.pipe() - pipe) + Math.abs(s.distance() - distance) / 100))
            .orElseThrow();
    String ofPipe = whole(on.distance());
    String words =
        "crest "
            + whole(distance)
            + " "
            + length.symbol()
            + " out"
            + (ofPipe.equals(whole(distance)) ? "" : ", " + ofPipe + " by the pipe")
            + ", pipe at "
            + Figures.decimals(pipe, 1)
            + " "
            + elevation.symbol();
    return new Crest(on.distance(), on.pipe(), words);
  }

  private String headWords(Line line, Gravity liquid, LineResult result, boolean hasHead) {
    if (!hasHead) {
      return "Pressure up to "
          + Digits.withUnit(pressure, result.highest().in(pressure))
          + ": too high to be drawn as head here";
    }
    String what = line.service() == Service.OIL_LEG ? "oil" : "brine";
    return "pressure as head of " + what + ", SG " + Figures.decimals(liquid.specific(), 3);
  }

  private String name(String thingId) {
    return lease.thing(thingId).map(Thing::name).orElse(thingId);
  }

  static String whole(double value) {
    return String.format(java.util.Locale.ROOT, "%,.0f", value);
  }
}
