package tankyard.engine.vessels;

import java.util.Objects;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * A cylinder standing on its end between two equal heads.
 *
 * @param lengthM seam to seam
 */
public record StandingVessel(double radiusM, double lengthM, Head head) implements Vessel {
  public StandingVessel {
    Objects.requireNonNull(head, "head");
    if (!(radiusM > 0 && lengthM >= 0)) {
      throw new IllegalArgumentException(
          "A vessel needs a radius above zero: " + radiusM + " m, " + lengthM + " m tall");
    }
  }

  @Override
  public double heightM() {
    return lengthM + 2 * head.depthM();
  }

  @Override
  public double belowM3(double heightM) {
    double h = Math.min(Math.max(heightM, 0), heightM());
    double bottom = head.standingM3(Math.min(h, head.depthM()));
    double inTop = Math.max(0, h - head.depthM() - lengthM);
    double top = head.fullM3() - head.standingM3(head.depthM() - inTop);
    return bottom + shellM3(h) + top;
  }

  @Override
  public Computed<Volume> below(Length height) {
    double h = Math.min(height.metres(), heightM());
    Volume all = Volume.ofBarrels(Unit.BARREL.fromSi(belowM3(h)));
    return Computed.of(all, () -> working(h));
  }

  private double shellM3(double h) {
    double inShell = Math.min(lengthM, Math.max(0, h - head.depthM()));
    return Math.PI * radiusM * radiusM * inShell;
  }

  private Working working(double h) {
    double inShell = Math.min(lengthM, Math.max(0, h - head.depthM()));
    double heads = belowM3(h) - shellM3(h);
    return Working.of(
        "Liquid in the vessel",
        "V",
        "(pi*R^2*h+Vh)/5.614583",
        Unit.BARREL,
        Source.published("D. Jones, Computing Fluid Tank Volumes (part-full heads)"),
        Term.of("R", "radius", Unit.FOOT.fromSi(radiusM), Unit.FOOT),
        Term.of("h", "depth of liquid in the shell", Unit.FOOT.fromSi(inShell), Unit.FOOT),
        Term.of(
            "Vh", "in the heads, " + head.words(), Unit.CUBIC_FOOT.fromSi(heads), Unit.CUBIC_FOOT));
  }
}
