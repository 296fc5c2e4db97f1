package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import java.util.List;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Power;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.vessels.HeatDuty;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;

/** What a heater-treater burns, with its water and after most of it was knocked out. */
final class HeaterTreaterSum implements QuickSum {
  private static final double MONTH_DAYS = 30;
  private static final List<Caution> FIRED =
      List.of(
          new Caution(
              "fired-vessel",
              "A treater is fired: its distance from tanks, wells and vents, and work near it, are for"
                  + " the local code and the fire marshal to say. The lease may not have the gas."));

  @Override
  public String id() {
    return "heater-treater";
  }

  @Override
  public String title() {
    return "Fuel of a heater-treater";
  }

  @Override
  public String about() {
    return "A barrel of oil takes 150 Btu for each degree Fahrenheit and one of water 350, over the"
        + " efficiency: knock the water out first.";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        amount("oil", "oil a day", Unit.BARREL_PER_DAY, "28 bbl/d"),
        amount("water", "water that comes with it", Unit.BARREL_PER_DAY, "350 bbl/d").orZero(),
        amount("left", "part of the water not knocked out before", Unit.PERCENT, "5 %")
            .orZero()
            .usual("5 %", "common practice, no source"),
        amount("from", "temperature it comes in at", Unit.FAHRENHEIT, "50 F"),
        amount("to", "treating temperature", Unit.FAHRENHEIT, "120 F")
            .usual("120 F", "common practice, no source; a bottle test tells"),
        amount("efficiency", "from burner to liquid", Unit.PERCENT, "70 %")
            .usual("70 %", "from memory"));
  }

  @Override
  public QuickResult compute(QuickValues in) {
    LiquidRate oil = in.rate("oil");
    double left = in.fraction("left").ratio();
    LiquidRate little = LiquidRate.ofBarrelsPerDay(left * in.rate("water").toBarrelsPerDay());
    Computed<Power> after = duty(in, little);
    Computed<Power> all = duty(in, in.rate("water"));
    return QuickResult.of(
            new QuickAnswer("duty", "Heat, water knocked out", after, Unit.BTU_PER_HOUR),
            new QuickAnswer("gas", "Gas it burns", HeatDuty.gas(after.value()), Unit.MCF_PER_DAY),
            new QuickAnswer(
                "propane",
                "Or propane a month of 30 days",
                HeatDuty.propane(after.value(), MONTH_DAYS),
                Unit.GALLON),
            new QuickAnswer(
                "propane-barrel",
                "Propane for each barrel sold",
                HeatDuty.propane(after.value(), 1 / oil.toBarrelsPerDay()),
                Unit.GALLON),
            new QuickAnswer("duty-all", "Heat with all the water", all, Unit.BTU_PER_HOUR))
        .saying(FIRED);
  }

  private static Computed<Power> duty(QuickValues in, LiquidRate water) {
    Temperature from = in.temperature("from");
    Fraction efficiency = in.fraction("efficiency");
    return HeatDuty.of(in.rate("oil"), water, from, in.temperature("to"), efficiency);
  }
}
