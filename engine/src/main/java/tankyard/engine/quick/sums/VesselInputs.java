package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;
import static tankyard.engine.quick.QuickInput.choice;

import java.util.List;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickInputException;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.vessels.ConicalHead;
import tankyard.engine.vessels.FlatHead;
import tankyard.engine.vessels.Head;
import tankyard.engine.vessels.LyingVessel;
import tankyard.engine.vessels.TorisphericalHead;

/** A lying vessel as it is asked for. */
final class VesselInputs {
  private VesselInputs() {}

  static QuickInput diameter() {
    return amount("diameter", "inside diameter", Unit.INCH, "30 in");
  }

  static QuickInput length() {
    return amount("length", "length seam to seam", Unit.FOOT, "10 ft");
  }

  static QuickInput heads() {
    return choice(
        "heads",
        "shape of both heads",
        "usual on separators; common practice, no source",
        List.of("2:1", "flat", "hemispherical", "dished", "conical"));
  }

  static QuickInput coneDepth() {
    return amount("cone", "depth of a conical head", Unit.INCH, "12 in").optional();
  }

  static LyingVessel read(QuickValues in) {
    double radius = in.length("diameter").metres() / 2;
    return new LyingVessel(radius, in.length("length").metres(), head(in, radius));
  }

  /** A height inside the vessel. */
  static Length height(QuickValues in, String id, LyingVessel vessel) {
    Length height = in.length(id);
    if (height.metres() > vessel.heightM() * (1 + 1e-12)) {
      throw new QuickInputException(
          "--"
              + id
              + ": "
              + in.words(id)
              + " stands above the vessel, which is "
              + in.words("diameter")
              + " across.");
    }
    return height;
  }

  private static Head head(QuickValues in, double radius) {
    String words = in.words("heads");
    if (in.has("cone") != words.equals("conical")) {
      throw new QuickInputException(
          "--cone: its depth is needed with conical heads and with no others.");
    }
    return switch (words) {
      case "flat" -> new FlatHead();
      case "hemispherical" -> Head.hemispherical(radius);
      case "dished" -> TorisphericalHead.flangedAndDished(radius);
      case "conical" -> new ConicalHead(radius, in.length("cone").metres());
      default -> Head.twoToOne(radius);
    };
  }
}
