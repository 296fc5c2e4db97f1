package tankyard.engine.checks.growth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Versus;
import tankyard.engine.outlook.Outlook;
import tankyard.engine.outlook.RunOut;
import tankyard.engine.units.Unit;

/** What to do before a thing runs out. */
final class WaysOn {
  private WaysOn() {}

  static List<String> of(Evidence evidence, RunOut row) {
    return switch (row.kind()) {
      case PUMP_LONG_HOURS, PUMP_FULL_TIME -> pump(evidence);
      case WELL_PRESSURE, PERMIT_RATE ->
          List.of(
              "Ask for the permit of a second injection well now, so that it takes water a month or"
                  + " two before.",
              "Until then haul, or shut in the wettest wells.");
      case WATER_HOURS ->
          List.of(
              "Before that month a second water tank beside it, a taller one, or a lower pump-on.",
              "A high switch on the water tank that stops the wells, and an alarm that calls"
                  + " somebody.");
      case OVERFLOW -> List.of("The next larger overflow, before that month.");
      case SETTING ->
          List.of(
              "Raise the setting in time, while the window has room.",
              "A larger water leg or dump valve, where their loss is what grew.");
      case WINDOW ->
          List.of(
              "A larger water leg or dump valve, where their loss is what grew.",
              "A larger trunk, or a second one, where the wells' lines lose most.");
    };
  }

  private static List<String> pump(Evidence evidence) {
    List<String> ways = new ArrayList<>();
    Optional<RunOut> well =
        evidence.outlook().flatMap(outlook -> outlook.of(RunOut.Kind.WELL_PRESSURE));
    ways.add(
        "Faster sheaves by then, as far as motor and the injection well's limit allow"
            + well.map(WaysOn::until).orElse("")
            + ".");
    ways.add(
        "A second pump; and before it runs all day a second water tank or a surer high switch,"
            + " since from then on every stop runs the tank over.");
    return ways;
  }

  private static String until(RunOut well) {
    double months = well.after().value().in(Unit.MONTH);
    return months <= Outlook.HORIZON_MONTHS
        ? ": the well itself is full in month " + Versus.print(months, Unit.ONE, 1)
        : "";
  }
}
