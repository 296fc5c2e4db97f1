package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import tankyard.engine.quick.QuickInput;
import tankyard.engine.units.Unit;

/** Inputs that several pipe sums share. */
final class PipeInputs {
  private PipeInputs() {}

  static QuickInput rate() {
    return amount("rate", "rate while it runs", Unit.BARREL_PER_DAY, "216 bbl/d");
  }

  static QuickInput bore() {
    return amount("bore", "inside diameter of the pipe", Unit.INCH, "2.067 in");
  }

  static QuickInput length() {
    return amount("length", "length of pipe", Unit.FOOT, "2000 ft");
  }

  static QuickInput roughness() {
    return amount("roughness", "roughness of the wall", Unit.INCH, "0.0018 in")
        .orZero()
        .usual("0.0018 in", "clean steel, Crane TP-410; plastic is about 0.00006 in");
  }
}
