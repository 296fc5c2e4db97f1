package tankyard.engine.catalog;

import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Steel line pipe: Barlow, 2 S t F E / D (49 CFR 192.105), with F 0.72 for open country (49 CFR
 * 192.111), the wall less 12.5 % mill tolerance and less the thread's depth, and never more than
 * the fittings stand. No corrosion is taken off: that is for whoever has seen the pipe.
 *
 * @param yield specified minimum yield strength
 * @param thread depth of the thread, zero for plain ends
 * @param fittings what its fittings stand
 * @param fittingsSource where that comes from
 */
public record SteelRating(
    Pressure yield,
    Length outside,
    Length wall,
    Length thread,
    Pressure fittings,
    Source fittingsSource)
    implements RatingLaw {
  private static final double DESIGN = 0.72;
  private static final double JOINT = 1.0;
  private static final double MILL = 0.875;

  /** 49 CFR 192.115 takes nothing off up to 250 degF (from memory). */
  private static final double HOTTEST_F = 250;

  private static final Source SOURCE =
      Source.published("49 CFR 192.105, 192.111(a); mill tolerance from ASTM A53");

  @Override
  public Optional<Computed<Pressure>> at(Temperature pipe, boolean oilInside) {
    boolean tooHot = pipe.toFahrenheit() > HOTTEST_F;
    List<Caution> cautions =
        tooHot ? RatingCautions.tooHot("Steel line pipe", pipe, HOTTEST_F) : List.of();
    double psi = tooHot ? 0 : Math.min(barlowPsi(), fittings.toPsi());
    return Optional.of(
        Computed.of(Pressure.ofPsi(psi), () -> working(tooHot ? 0 : 1)).with(cautions));
  }

  private double barlowPsi() {
    double sound = wall.toInches() * MILL - thread.toInches();
    return 2 * yield.toPsi() * sound / outside.toInches() * DESIGN * JOINT;
  }

  private Working working(double heat) {
    return Working.of(
        "Rating of the pipe and its fittings",
        "P",
        "f_t*min(2*S*(w*m-h)/D*f_d*f_j, C)",
        Unit.PSI,
        SOURCE,
        Term.number("f_t", "1 up to 250 °F", heat),
        Term.of("S", "specified minimum yield strength", yield, Unit.PSI),
        Term.of("w", "wall", wall, Unit.INCH),
        Term.number("m", "what mill tolerance leaves of it", MILL),
        Term.of("h", "depth of the thread", thread, Unit.INCH),
        Term.of("D", "outside diameter", outside, Unit.INCH),
        Term.number("f_d", "design factor, open country", DESIGN),
        Term.number("f_j", "joint factor, seamless or electric weld", JOINT),
        Term.of("C", "what its fittings stand: " + fittingsSource.line(), fittings, Unit.PSI));
  }
}
