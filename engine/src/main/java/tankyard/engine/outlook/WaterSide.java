package tankyard.engine.outlook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Practice;
import tankyard.engine.lease.Thing;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.Defaults;
import tankyard.engine.study.InjectionResult;
import tankyard.engine.study.OverflowResult;
import tankyard.engine.study.WaterWorks;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.wells.InjectionLaw;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** Pumps, injection wells, tanks and overflows: each is full at some rate of water. */
final class WaterSide {
  private final Flood flood;
  private final WaterWorks result;
  private final Lease lease;
  private final double water;

  WaterSide(Flood flood) {
    this.flood = flood;
    CaseStudy study = flood.today().get(0);
    this.result = WaterWorks.of(study);
    this.lease = study.lease();
    this.water = study.waterDay().toBarrelsPerDay();
  }

  List<RunOut> rows() {
    List<RunOut> rows = new ArrayList<>();
    rows.addAll(pumps());
    wellPressure().ifPresent(rows::add);
    permitRate().ifPresent(rows::add);
    waterHours().ifPresent(rows::add);
    rows.addAll(overflows());
    return rows;
  }

  private Term today() {
    return Term.of("Qw", "water a day, today", water, Unit.BARREL_PER_DAY);
  }

  private static Term limit(String words, double barrelsPerDay) {
    return Term.of("L", words, barrelsPerDay, Unit.BARREL_PER_DAY);
  }

  private List<RunOut> pumps() {
    List<InjectionPump> pumps =
        lease.injectionPumps().stream()
            .filter(p -> p.status().stays() && p.rate().toBarrelsPerDay() > 0)
            .toList();
    double all = pumps.stream().mapToDouble(p -> p.rate().toBarrelsPerDay()).sum();
    if (pumps.isEmpty()) {
      return List.of();
    }
    double share = Defaults.pumpShare(lease.practice()).ratio();
    String who = name(pumps, "The injection pumps");
    String percent = Math.round(1000 * share) / 10.0 + " %";
    return List.of(
        row(
            RunOut.Kind.PUMP_LONG_HOURS,
            only(pumps),
            who + " run" + s(pumps) + " " + percent.replace(".0 %", " %") + " of the day",
            "Months until the pumps run long hours",
            limit("what they put away in that share of the day", share * all),
            List.of()),
        row(
            RunOut.Kind.PUMP_FULL_TIME,
            only(pumps),
            who + " run" + s(pumps) + " the clock round",
            "Months until the pumps run all day",
            limit("what they put away in a whole day", all),
            List.of()));
  }

  private static String s(List<?> one) {
    return one.size() == 1 ? "s" : "";
  }

  private static String only(List<? extends Thing> things) {
    return things.size() == 1 ? things.get(0).id() : "";
  }

  private static String name(List<? extends Thing> things, String several) {
    return things.size() == 1 ? things.get(0).name() : several;
  }

  private RunOut row(
      RunOut.Kind kind,
      String thingId,
      String words,
      String title,
      Term limit,
      List<Working> workings) {
    return new RunOut(
        kind, thingId, Optional.empty(), words, flood.until(title, limit, today(), workings));
  }

  /** Wells the pumps reach, each with its limit; empty where one of them has none. */
  private Map<InjectionWell, Optional<Computed<Pressure>>> limits() {
    Map<InjectionWell, Optional<Computed<Pressure>>> limits = new LinkedHashMap<>();
    for (InjectionWell well : lease.injectionWells()) {
      result.injections().stream()
          .filter(i -> i.wellId().equals(well.id()))
          .findFirst()
          .map(InjectionResult::limit)
          .ifPresent(limit -> limits.put(well, limit));
    }
    return limits;
  }

  private Optional<RunOut> wellPressure() {
    Map<InjectionWell, Optional<Computed<Pressure>>> limits = limits();
    double all = 0;
    List<Working> workings = new ArrayList<>();
    for (Map.Entry<InjectionWell, Optional<Computed<Pressure>>> entry : limits.entrySet()) {
      InjectionWell well = entry.getKey();
      if (entry.getValue().isEmpty() || well.resistance().pascalsPerCubicMetrePerSecond() <= 0) {
        return Optional.empty();
      }
      Computed<Pressure> limit = entry.getValue().get();
      LiquidRate most =
          new InjectionLaw(well.pressureAtNoFlow(), well.resistance()).rateAt(limit.value());
      all += most.toBarrelsPerDay();
      workings.add(limit.working());
    }
    List<InjectionWell> wells = List.copyOf(limits.keySet());
    return wells.isEmpty()
        ? Optional.empty()
        : Optional.of(
            row(
                RunOut.Kind.WELL_PRESSURE,
                only(wells),
                name(wells, "The injection wells")
                    + " take"
                    + s(wells)
                    + " no more at "
                    + (wells.size() == 1 ? "its" : "their")
                    + " limit of pressure, pumped all day",
                "Months until the wells are full at their limit",
                limit("all day at the limit of pressure", all),
                workings));
  }

  private Optional<RunOut> permitRate() {
    List<InjectionWell> wells = List.copyOf(limits().keySet());
    if (wells.isEmpty() || wells.stream().anyMatch(w -> w.permitRate().isEmpty())) {
      return Optional.empty();
    }
    double all =
        wells.stream().mapToDouble(w -> w.permitRate().orElseThrow().toBarrelsPerDay()).sum();
    return Optional.of(
        row(
            RunOut.Kind.PERMIT_RATE,
            only(wells),
            "The day's water is what the permits allow",
            "Months until the permitted rate",
            limit("permitted in a day", all),
            List.of()));
  }

  private Optional<RunOut> waterHours() {
    Practice practice = lease.practice();
    Time night = practice.nightOut().orElse(Defaults.NIGHT_OUT);
    return result
        .storage()
        .waterRoom()
        .filter(room -> night.seconds() > 0)
        .map(
            room ->
                row(
                    RunOut.Kind.WATER_HOURS,
                    "",
                    "With the pump down the water tanks last no longer than nobody looks",
                    "Months until the tanks last only that long",
                    limit(
                        "fills the room above pump-on while nobody looks",
                        room.value().toBarrels() / night.toDays()),
                    List.of(room.working())));
  }

  /** For each overflow the case in which it is short first. */
  private List<RunOut> overflows() {
    List<RunOut> rows = new ArrayList<>();
    for (OverflowResult overflow : result.overflows()) {
      flood.today().stream()
          .filter(c -> c.allWater().toBarrelsPerDay() > 0)
          .map(c -> overflow(overflow, c))
          .min(Comparator.comparingDouble(r -> r.after().value().seconds()))
          .ifPresent(rows::add);
    }
    return rows;
  }

  private RunOut overflow(OverflowResult overflow, CaseStudy c) {
    double left =
        Math.max(0, overflow.capacity().value().toBarrelsPerDay() - c.allOil().toBarrelsPerDay());
    return new RunOut(
        RunOut.Kind.OVERFLOW,
        overflow.lineId(),
        Optional.of(c.designCase().id()),
        "All the fluid is all "
            + lease.line(overflow.lineId()).map(l -> l.name()).orElse("the overflow")
            + " passes",
        flood.until(
            "Months until the overflow is too small",
            limit("water it passes with all the oil", left),
            Term.of("Qw", "water today in this case", c.allWater(), Unit.BARREL_PER_DAY),
            List.of(overflow.capacity().working())));
  }
}
