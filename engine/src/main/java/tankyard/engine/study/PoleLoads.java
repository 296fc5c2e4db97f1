package tankyard.engine.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MotorDriven;
import tankyard.engine.lease.PowerPole;
import tankyard.engine.lease.Wire;
import tankyard.engine.pumps.MotorAmps;
import tankyard.engine.pumps.MotorSupply;
import tankyard.engine.units.Current;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** The load list: every motor with the pole it is nearest to. The same in every case. */
public final class PoleLoads {
  /** What is usually left to wires; common practice, no source. */
  public static final Fraction USUAL_LOSS = Fraction.ofPercent(5);

  private static final Source NAMEPLATE = Source.definition("amps on the nameplate");
  private static final Source SUM = Source.definition("amps add up");

  private PoleLoads() {}

  /** One for each pole that any motor is nearest to; none where no pole stays. */
  public static List<PoleLoad> of(Lease lease) {
    Map<PowerPole, List<PoleLoad.Motor>> byPole = new LinkedHashMap<>();
    lease.powerPoles().forEach(pole -> byPole.put(pole, new ArrayList<>()));
    lease
        .motorDriven()
        .forEach(
            driven ->
                lease
                    .poleNearest(driven.at())
                    .ifPresent(pole -> byPole.get(pole).add(motor(driven, pole))));
    return byPole.entrySet().stream()
        .filter(e -> !e.getValue().isEmpty())
        .map(e -> load(e.getKey(), e.getValue()))
        .toList();
  }

  private static PoleLoad load(PowerPole pole, List<PoleLoad.Motor> motors) {
    double running = motors.stream().mapToDouble(m -> m.running().value().amps()).sum();
    double largest = motors.stream().mapToDouble(m -> m.running().value().amps()).max().orElse(0);
    return new PoleLoad(
        pole.id(),
        motors,
        Computed.of(Current.ofAmps(running), () -> sum(motors)),
        Computed.of(
            Current.ofAmps(MotorSupply.STARTING * running),
            () ->
                Working.of(
                    "Amps as all motors start at once",
                    "Is",
                    "6*I",
                    Unit.AMPERE,
                    SUM,
                    Term.of("I", "all at full load", running, Unit.AMPERE))),
        Computed.of(
            Current.ofAmps(running + (MotorSupply.STARTING - 1) * largest),
            () ->
                Working.of(
                    "Amps as the largest starts last",
                    "Id",
                    "I-Im+6*Im",
                    Unit.AMPERE,
                    SUM,
                    Term.of("I", "all at full load", running, Unit.AMPERE),
                    Term.of("Im", "the largest at full load", largest, Unit.AMPERE))));
  }

  private static Working sum(List<PoleLoad.Motor> motors) {
    List<Term> terms = new ArrayList<>();
    StringBuilder formula = new StringBuilder("0");
    for (PoleLoad.Motor motor : motors) {
      String symbol = "I" + (terms.size() + 1);
      formula.append('+').append(symbol);
      terms.add(
          Term.of(symbol, "motor of " + motor.thingId(), motor.running().value(), Unit.AMPERE));
    }
    return new Working(
        "Amps with every motor at full load",
        "I",
        formula.toString(),
        terms,
        Unit.AMPERE,
        SUM,
        motors.stream().map(m -> m.running().working()).toList());
  }

  private static PoleLoad.Motor motor(MotorDriven driven, PowerPole pole) {
    MotorSupply supply =
        new MotorSupply(pole.volts(), MotorSupply.Phases.valueOf(pole.phases().name()));
    Computed<Current> running =
        driven
            .motorAmps()
            .map(PoleLoads::read)
            .orElseGet(() -> MotorAmps.of(driven.motor().orElseThrow(), supply));
    return new PoleLoad.Motor(
        driven.id(),
        driven.motor().orElseThrow(),
        running,
        MotorSupply.starting(running.value()),
        driven.wire().map(w -> lost(w, w.run(pole.at(), driven.at()), supply, running.value())));
  }

  private static Computed<Current> read(Current amps) {
    return Computed.of(
        amps,
        () ->
            Working.of(
                "Amps at full load",
                "I",
                "In",
                Unit.AMPERE,
                NAMEPLATE,
                Term.of("In", "as typed", amps, Unit.AMPERE)));
  }

  private static PoleLoad.Lost lost(Wire wire, Length length, MotorSupply supply, Current running) {
    return new PoleLoad.Lost(
        wire,
        length,
        supply.drop(run(wire, wire.gauge(), length), running),
        supply.drop(run(wire, wire.gauge(), length), MotorSupply.starting(running).value()),
        Arrays.stream(Wire.Gauge.values())
            .filter(
                gauge ->
                    supply.drop(run(wire, gauge, length), running).value().ratio()
                        <= USUAL_LOSS.ratio())
            .findFirst());
  }

  private static MotorSupply.Wire run(Wire wire, Wire.Gauge gauge, Length length) {
    return new MotorSupply.Wire(
        MotorSupply.Metal.valueOf(wire.metal().name()), gauge.number(), length);
  }
}
