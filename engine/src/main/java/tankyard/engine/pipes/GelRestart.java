package tankyard.engine.pipes;

import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * The pressure that starts a line full of gelled oil again: the gel must yield on the whole wall at
 * once, {@code dp = 4 tau L / d}. An upper bound in kind (a gel may yield piece by piece, and
 * shrink from the wall as it cools) and rough in size: strengths measured twice differ by a factor
 * of two, by how fast the oil cooled and how long it stood.
 *
 * @param strength shear stress at which the gel yields
 */
public record GelRestart(Pressure strength, double lengthM, double boreM) {
  private static final Source SOURCE =
      Source.definition("balance of the gel's strength on the wall against pressure on the bore");

  public Computed<Pressure> pressure() {
    return Computed.of(
        Pressure.psiFromPascals(4 * strength.pascals() * lengthM / boreM),
        () ->
            Working.of(
                "Pressure that starts the gelled line",
                "dp",
                "4*tau*12*L/d",
                Unit.PSI,
                SOURCE,
                Term.of("tau", "gel strength", strength, Unit.PSI),
                Term.of("L", "length", Length.ofFeet(Unit.FOOT.fromSi(lengthM)), Unit.FOOT),
                Term.of("d", "bore", Unit.INCH.fromSi(boreM), Unit.INCH)));
  }
}
