package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import java.util.List;
import tankyard.engine.pumps.PumpPower;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;

/** Shaft power of a pump and its hours. */
final class PumpPowerSum implements QuickSum {
  @Override
  public String id() {
    return "pump-power";
  }

  @Override
  public String title() {
    return "Power and hours of a pump";
  }

  @Override
  public String about() {
    return "Rate times pressure over efficiency: bbl/d psi/58,775.5. With a day's water: how long it"
        + " runs.";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        PipeInputs.rate(),
        amount("pressure", "pressure it adds", Unit.PSI, "280 psi"),
        amount("efficiency", "pump and drive together", Unit.PERCENT, "85 %")
            .usual("85 %", "common practice, no source"),
        amount("daily", "water a day", Unit.BARREL_PER_DAY, "420 bbl/d").optional());
  }

  @Override
  public QuickResult compute(QuickValues in) {
    QuickResult power =
        QuickResult.of(
            new QuickAnswer(
                "power",
                "Power at the shaft",
                PumpPower.brake(
                    in.rate("rate"), in.pressure("pressure"), in.fraction("efficiency")),
                Unit.HORSEPOWER));
    if (!in.has("daily")) {
      return power;
    }
    Computed<Time> hours = PumpPower.hoursADay(in.rate("daily"), in.rate("rate"));
    return power
        .and(List.of(new QuickAnswer("hours", "Runs a day", hours, Unit.HOUR)))
        .saying(late(hours.value()));
  }

  private static List<Caution> late(Time hours) {
    if (hours.toHours() <= 24) {
      return List.of();
    }
    return List.of(
        new Caution(
            "pump-too-small", "The pump can't keep up: it would need more than 24 hours a day."));
  }
}
