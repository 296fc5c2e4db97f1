package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;
import static tankyard.engine.quick.QuickInput.choice;
import static tankyard.engine.quick.QuickInput.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.pumps.MotorSupply;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickInputException;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Current;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Power;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Voltage;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;

/** What a motor draws, and what of its voltage the wire to it takes. */
final class VoltageDropSum implements QuickSum {
  private static final double USUAL_LIMIT_PERCENT = 5;
  private static final List<String> PHASES = List.of("one", "three");
  private static final List<String> METALS = List.of("copper", "aluminium");
  private static final Map<String, Integer> LARGE =
      Map.of("1/0", 0, "2/0", -1, "3/0", -2, "4/0", -3);
  private static final Caution ELECTRICIAN =
      new Caution(
          "electrician-decides",
          "Wire, breaker, starter and grounding are for the local electrical code and a licensed"
              + " electrician to decide.");

  @Override
  public String id() {
    return "voltage-drop";
  }

  @Override
  public String title() {
    return "Amps of a motor and voltage lost on its way";
  }

  @Override
  public String about() {
    return "2 K I L/CM, 1.732 in place of 2 for three phases. Wells and pump that start together after"
        + " a power cut add up their starting amps: timers with different delays keep them apart.";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        amount("motor", "power of the motor", Unit.HORSEPOWER, "5 hp"),
        amount("volts", "volts between the wires", Unit.VOLT, "240 V"),
        choice("phases", "phases of the supply", "the commoner on a lease", PHASES),
        amount("length", "length of the run, one way", Unit.FOOT, "800 ft"),
        words("wire", "wire gauge: 14 to 1, 1/0 to 4/0", "4"),
        choice("metal", "metal of the wire", "aluminium loses 1.6 times as much", METALS),
        amount("amps", "amps on the motor's nameplate", Unit.AMPERE, "28 A").optional(),
        amount(
                "efficiency",
                "efficiency of the motor, without nameplate amps",
                Unit.PERCENT,
                "80 %")
            .usual("80 %", "from memory"),
        amount(
                "power-factor",
                "power factor of the motor, without nameplate amps",
                Unit.PERCENT,
                "80 %")
            .usual("80 %", "from memory"));
  }

  @Override
  public QuickResult compute(QuickValues in) {
    MotorSupply supply =
        new MotorSupply(
            in.quantity("volts", Voltage::new),
            in.words("phases").equals(PHASES.get(0))
                ? MotorSupply.Phases.ONE
                : MotorSupply.Phases.THREE);
    MotorSupply.Wire wire =
        new MotorSupply.Wire(
            in.words("metal").equals(METALS.get(0))
                ? MotorSupply.Metal.COPPER
                : MotorSupply.Metal.ALUMINIUM,
            gauge(in.words("wire")),
            in.length("length"));
    Optional<Computed<Current>> worked =
        in.has("amps") ? Optional.empty() : Optional.of(running(in, supply));
    Current amps = worked.map(Computed::value).orElseGet(() -> in.quantity("amps", Current::new));
    Computed<Current> starting = MotorSupply.starting(amps);
    Computed<Fraction> drop = supply.drop(wire, amps);
    List<QuickAnswer> answers = new ArrayList<>();
    worked.ifPresent(
        w -> answers.add(new QuickAnswer("amps", "Amps at full load", w, Unit.AMPERE)));
    answers.add(new QuickAnswer("starting", "Amps as it starts", starting, Unit.AMPERE));
    answers.add(new QuickAnswer("drop", "Voltage lost while it runs", drop, Unit.PERCENT));
    answers.add(
        new QuickAnswer(
            "drop-starting",
            "Voltage lost as it starts",
            supply.drop(wire, starting.value()),
            Unit.PERCENT));
    return QuickResult.of(answers.toArray(QuickAnswer[]::new)).saying(cautions(drop.value()));
  }

  private static Computed<Current> running(QuickValues in, MotorSupply supply) {
    return supply.running(
        in.quantity("motor", Power::new), in.fraction("efficiency"), in.fraction("power-factor"));
  }

  private static int gauge(String typed) {
    String plain = typed.strip().replace("#", "");
    Integer large = LARGE.get(plain);
    if (large != null) {
      return large;
    }
    if (!plain.matches("[1-9]|1[0-4]")) {
      throw new QuickInputException(
          "--wire: " + typed + " is no wire gauge; 14 to 1 and 1/0 to 4/0 are taken.");
    }
    return Integer.parseInt(plain);
  }

  private static List<Caution> cautions(Fraction drop) {
    if (drop.toPercent() <= USUAL_LIMIT_PERCENT) {
      return List.of(ELECTRICIAN);
    }
    return List.of(
        new Caution(
            "voltage-drop-large",
            "More than the 5 % that is usually left to wires (common practice, no source): the motor"
                + " starts hard and runs hot. Take thicker wire, more volts, or set the transformer"
                + " nearer."),
        ELECTRICIAN);
  }
}
