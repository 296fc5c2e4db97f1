package tankyard.engine.vessels;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * A cylinder lying level between two equal heads. The shell holds its length times a circle's
 * segment.
 *
 * @param lengthM seam to seam
 */
public record LyingVessel(double radiusM, double lengthM, Head head) implements Vessel {
  private static final Source SEGMENT = Source.definition("segment of a circle");
  private static final Source HEADS =
      Source.published("D. Jones, Computing Fluid Tank Volumes (part-full heads)");

  public LyingVessel {
    Objects.requireNonNull(head, "head");
    if (!(radiusM > 0 && lengthM >= 0)) {
      throw new IllegalArgumentException(
          "A vessel needs a radius above zero: " + radiusM + " m, " + lengthM + " m long");
    }
  }

  @Override
  public double heightM() {
    return 2 * radiusM;
  }

  @Override
  public double belowM3(double heightM) {
    double h = Math.min(Math.max(heightM, 0), heightM());
    return lengthM * Cylinder.segmentM2(radiusM, h) + 2 * head.lyingM3(h);
  }

  @Override
  public Computed<Volume> below(Length height) {
    double h = Math.min(height.metres(), heightM());
    Volume all = Volume.ofBarrels(Unit.BARREL.fromSi(belowM3(h)));
    return Computed.of(all, () -> working(h));
  }

  private Working working(double h) {
    double heads = Unit.CUBIC_FOOT.fromSi(2 * head.lyingM3(h));
    List<Term> terms =
        new ArrayList<>(
            List.of(
                Term.of("R", "radius", Unit.FOOT.fromSi(radiusM), Unit.FOOT),
                Term.of("h", "depth of liquid", Unit.FOOT.fromSi(h), Unit.FOOT),
                Term.of("L", "seam to seam", Unit.FOOT.fromSi(lengthM), Unit.FOOT),
                Term.number("theta", "acos((R-h)/R) in radians", Cylinder.halfAngle(radiusM, h))));
    String shell = "L*(R^2*theta-(R-h)*sqrt(2*R*h-h^2))";
    if (heads == 0) {
      return working("(" + shell + ")/5.614583", SEGMENT, terms);
    }
    terms.add(Term.of("Vh", "in both heads, " + head.words(), heads, Unit.CUBIC_FOOT));
    return working("(" + shell + "+Vh)/5.614583", HEADS, terms);
  }

  private static Working working(String formula, Source source, List<Term> terms) {
    return new Working("Liquid in the vessel", "V", formula, terms, Unit.BARREL, source, List.of());
  }
}
