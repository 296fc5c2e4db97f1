package tankyard.engine.tanks;

import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * How high a berm must stand: the largest tank and the rain, over the ground the other tanks leave
 * free. 40 CFR 112.9(c)(2) asks for the largest container and freeboard for rain; which storm, and
 * whether more is wanted, is the state's to say.
 */
public final class Berm {
  private static final Source SOURCE =
      Source.published("40 CFR 112.9(c)(2): largest container and rain; upright walls");

  private static final Source DIRT = Source.commonPractice("2 ft wide on top, sides of 1 1/2 to 1");
  private static final double CREST_FT = 2;
  private static final double SIDE = 1.5;

  private Berm() {}

  public static Computed<Length> height(BermSpec spec) {
    double volume = spec.factor().ratio() * spec.largestTank().toCubicFeet();
    double inside = spec.inside().toSquareFeet();
    double feet =
        (volume + inside * spec.rain().toFeet()) / (inside - spec.otherFootprints().toSquareFeet())
            + spec.freeboard().toFeet();
    return Computed.of(
        Length.ofFeet(feet),
        () ->
            Working.of(
                "Height of the berm",
                "h",
                "(k*V+A*r)/(A-Af)+b",
                Unit.FOOT,
                SOURCE,
                Term.number("k", "factor on the largest tank", spec.factor().ratio()),
                Term.of("V", "largest tank", spec.largestTank(), Unit.CUBIC_FOOT),
                Term.of("A", "ground inside the berm", spec.inside(), Unit.SQUARE_FOOT),
                Term.of("r", "rain", spec.rain(), Unit.FOOT),
                Term.of("Af", "under the other tanks", spec.otherFootprints(), Unit.SQUARE_FOOT),
                Term.of("b", "freeboard", spec.freeboard(), Unit.FOOT)));
  }

  /**
   * Dirt in a berm of that height round the inside: its section times the length of its middle,
   * which runs round outside its inner foot, the corners rounded. As it lies settled: loose dirt
   * takes more room.
   *
   * @param around along its inner foot
   */
  public static Computed<Volume> dirt(Length around, Length height) {
    double h = height.toFeet();
    double foot = CREST_FT + 2 * SIDE * h;
    double middle = around.toFeet() + Math.PI * foot;
    double cubicFeet = h * (CREST_FT + SIDE * h) * middle;
    return Computed.of(
        Volume.of(cubicFeet / 27, Unit.CUBIC_YARD),
        () ->
            Working.of(
                "Dirt in the berm",
                "V",
                "h*(2+1.5*h)*(P+pi*(2+3*h))/27",
                Unit.CUBIC_YARD,
                DIRT,
                Term.of("P", "round the inside", around, Unit.FOOT),
                Term.of("h", "height", height, Unit.FOOT)));
  }
}
