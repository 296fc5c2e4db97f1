package tankyard.engine.valves;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.units.Force;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Mass;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * What a float on the interface can pull, and the most pressure across the seat it can work
 * against. The ball rises in brine and sinks in oil; each difference of gravity times its volume,
 * times the lever, less friction, is the pull one way. The weaker of the two must overcome port
 * area times pressure <em>across the seat</em> (not the gauge: add the head down to the valve, take
 * off what stands behind it).
 */
public final class FloatPull {
  private static final Source BUOYANCY =
      Source.definition("buoyancy, fresh water 0.0361 lb per cubic inch");

  private final FloatSpec spec;
  private final double brine;
  private final double oil;

  /** Gravities at the separator's temperature, against fresh water at 60 degF. */
  public FloatPull(FloatSpec spec, Gravity brine, Gravity oil) {
    this.spec = spec;
    this.brine = brine.specific();
    this.oil = oil.specific();
  }

  /** At the seat, rising in brine. */
  public Computed<Force> opening() {
    return pull("Pull to open", "SGw", "SGf", brine, spec.weight().specific());
  }

  /** At the seat, sinking in oil. */
  public Computed<Force> closing() {
    return pull("Pull to close", "SGf", "SGo", spec.weight().specific(), oil);
  }

  /** The most pressure across the seat it works against both ways; zero if it can't work at all. */
  public Computed<Pressure> most() {
    Computed<Force> weaker =
        opening().value().newtons() <= closing().value().newtons() ? opening() : closing();
    double inches = spec.port().toInches();
    double pounds = Math.max(0, weaker.value().toPounds());
    return Computed.of(
            Pressure.ofPsi(pounds / (Math.PI / 4 * inches * inches)),
            () ->
                Working.of(
                        "Most pressure across the seat the float works against",
                        "dp",
                        "F/(pi/4*d^2)",
                        Unit.PSI,
                        Source.definition("port area times pressure"),
                        Term.of("F", "the weaker pull", pounds, Unit.POUND_FORCE),
                        Term.of("d", "bore of the port", spec.port(), Unit.INCH))
                    .from(List.of(weaker.working())))
        .with(cautions());
  }

  /** What the ball should weigh to lie halfway between oil and brine, and pull alike both ways. */
  public Computed<Mass> halfway() {
    double inches = spec.ball().toInches();
    double pounds =
        POUNDS_PER_CUBIC_INCH * (brine + oil) / 2 * Math.PI / 6 * inches * inches * inches;
    return Computed.of(
        Mass.ofPounds(pounds),
        () ->
            Working.of(
                "Weight of the ball halfway between oil and brine",
                "W",
                "0.03609174*(SGw+SGo)/2*pi/6*b^3",
                Unit.POUND,
                BUOYANCY,
                Term.number("SGw", "gravity, brine", brine),
                Term.number("SGo", "gravity, oil", oil),
                Term.of("b", "diameter of the ball", spec.ball(), Unit.INCH)));
  }

  private Computed<Force> pull(
      String title, String upSymbol, String downSymbol, double up, double down) {
    double inches = spec.ball().toInches();
    double cubicInches = Math.PI / 6 * inches * inches * inches;
    double kept = 1 - spec.lost().ratio();
    double pounds = POUNDS_PER_CUBIC_INCH * (up - down) * cubicInches * spec.lever().ratio() * kept;
    return Computed.of(
        Force.ofPounds(pounds),
        () ->
            Working.of(
                title,
                "F",
                "0.03609174*(" + upSymbol + "-" + downSymbol + ")*pi/6*b^3*n*(1-m)",
                Unit.POUND_FORCE,
                BUOYANCY,
                Term.number(upSymbol, "gravity, " + words(upSymbol), up),
                Term.number(downSymbol, "gravity, " + words(downSymbol), down),
                Term.of("b", "diameter of the ball", spec.ball(), Unit.INCH),
                Term.number("n", "lever", spec.lever().ratio()),
                Term.number("m", "share lost to friction", spec.lost().ratio())));
  }

  /** 999.016 kg/m3 in lb per cubic inch. */
  private static final double POUNDS_PER_CUBIC_INCH = 0.03609174;

  private static String words(String symbol) {
    return switch (symbol) {
      case "SGw" -> "brine";
      case "SGo" -> "oil";
      default -> "the float";
    };
  }

  private List<Caution> cautions() {
    List<Caution> said = new ArrayList<>();
    double ball = spec.weight().specific();
    if (ball <= oil || ball >= brine) {
      said.add(
          new Caution(
              "float-outside-liquids",
              "The float weighs "
                  + ball
                  + " SG and must lie between the oil at "
                  + oil
                  + " and the brine at "
                  + brine
                  + ": weight it again."));
    }
    return said;
  }
}
