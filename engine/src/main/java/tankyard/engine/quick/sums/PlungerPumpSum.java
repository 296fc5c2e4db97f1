package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import java.util.List;
import tankyard.engine.pumps.PlungerPump;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickInputException;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Rotation;
import tankyard.engine.units.Unit;

/** What a plunger pump delivers. */
final class PlungerPumpSum implements QuickSum {
  private static final int MOST_PLUNGERS = 12;

  @Override
  public String id() {
    return "plunger-pump";
  }

  @Override
  public String title() {
    return "What a plunger pump delivers";
  }

  @Override
  public String about() {
    return "Swept volume of single-acting plungers, less slip.";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        amount("plunger", "diameter of a plunger", Unit.INCH, "1.25 in"),
        amount("stroke", "stroke", Unit.INCH, "2.5 in"),
        amount("speed", "speed of the crank", Unit.RPM, "300 rpm"),
        amount("plungers", "number of plungers", Unit.ONE, "3").usual("3", "triplex"),
        amount("slip", "share that leaks back", Unit.PERCENT, "5 %")
            .orZero()
            .usual("5 %", "common practice, no source"),
        amount("motor-speed", "speed of the motor", Unit.RPM, "1750 rpm")
            .usual("1750 rpm", "four poles at 60 Hz, loaded; from memory"),
        amount("pump-sheave", "pitch diameter of the pump's sheave", Unit.INCH, "18 in")
            .optional());
  }

  @Override
  public QuickResult compute(QuickValues in) {
    double typed = in.number("plungers");
    if (typed != Math.rint(typed) || typed > MOST_PLUNGERS) {
      throw new QuickInputException(
          "--plungers: " + in.words("plungers") + " is no number of plungers; 1 to 12 is taken.");
    }
    PlungerPump pump =
        new PlungerPump(
            (int) typed, in.length("plunger"), in.length("stroke"), in.fraction("slip"));
    Rotation speed = in.quantity("speed", Rotation::new);
    QuickResult delivers =
        QuickResult.of(
            new QuickAnswer("rate", "Delivers", pump.rate(speed), Unit.BARREL_PER_DAY),
            new QuickAnswer("turn", "In one turn", pump.perTurn(), Unit.BARREL));
    if (!in.has("pump-sheave")) {
      return delivers;
    }
    Rotation motor = in.quantity("motor-speed", Rotation::new);
    return delivers.and(
        List.of(
            new QuickAnswer(
                "motor-sheave",
                "Motor's sheave, pitch diameter",
                PlungerPump.motorSheave(in.length("pump-sheave"), speed, motor),
                Unit.INCH)));
  }
}
