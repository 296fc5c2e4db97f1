package tankyard.engine.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Practice;
import tankyard.engine.lease.Tank;
import tankyard.engine.tanks.RoundTank;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Mass;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** What the oil and water tanks of a lease give in one case. */
final class Storage {
  private static final Source BALANCE = Source.definition("volume over rate");
  private static final Source WEIGHT =
      Source.definition("a barrel of fresh water at 60 °F weighs 350.16 lb");
  private static final double WATER_POUNDS_A_BARREL = 350.16;
  private static final Source NEED =
      Source.commonPractice("one load and what comes while the road is out");

  private final CaseStudy study;
  private final LiquidRate oil;
  private final LiquidRate water;
  private final LiquidRate allFluid;
  private final LiquidRate allPumps;

  private Storage(CaseStudy study) {
    this.study = study;
    oil = CaseStudy.barrels(study.wells().stream().mapToDouble(WellFlow::oilDay).sum());
    water = study.waterDay();
    allFluid = study.allFluid();
    allPumps = CaseStudy.barrels(Injections.allPumps(study));
  }

  static StorageResult of(CaseStudy study) {
    return new Storage(study).result();
  }

  private StorageResult result() {
    List<Tank> oilTanks = study.survey().tanks(Tank.Duty.OIL);
    List<Tank> waterTanks = study.survey().tanks(Tank.Duty.WATER);
    List<Computed<Volume>> each = oilTanks.stream().map(Storage::usable).toList();
    Optional<Computed<Volume>> usable = sum("Usable oil storage", each);
    Optional<Computed<Volume>> room =
        sum(
            "Room in the water tanks above pump-on",
            waterTanks.stream().map(Storage::room).toList());
    Optional<Computed<Volume>> band =
        allPumps.toBarrelsPerDay() > 0
            ? sum(
                "Between pump-off and pump-on",
                waterTanks.stream().map(t -> between(t, pumpOff(t), pumpOn(t))).toList())
            : Optional.empty();
    boolean makesOil = oil.toBarrelsPerDay() > 0;
    boolean makesWater = water.toBarrelsPerDay() > 0;
    Optional<Computed<Time>> runs = band.flatMap(this::runs);
    Optional<Computed<Time>> rests = makesWater ? band.map(this::rests) : Optional.empty();
    return new StorageResult(
        oil,
        water,
        allFluid,
        usable,
        makesOil && usable.isPresent() ? Optional.of(haul()) : Optional.empty(),
        makesOil ? usable.map(this::roadOut) : Optional.empty(),
        makesOil ? usable.map(all -> RefusedLoad.lasts(each, all, load(), oil)) : Optional.empty(),
        usable.map(u -> needed()),
        room,
        makesWater ? room.map(r -> RoundTank.lasts(r.value(), water)) : Optional.empty(),
        band,
        runs,
        rests,
        runs.flatMap(run -> rests.map(rest -> starts(run, rest))),
        makesOil && usable.isPresent() ? Optional.of(weight()) : Optional.empty());
  }

  /** From the sales outlet to the high switch. */
  private static Computed<Volume> usable(Tank tank) {
    return between(tank, Defaults.outletOf(tank), switchHeight(tank));
  }

  static Length switchHeight(Tank tank) {
    return tank.switchHeight()
        .orElseGet(
            () ->
                Length.ofFeet(tank.overflowHeight().toFeet() - Defaults.SWITCH_BELOW_LIP.toFeet()));
  }

  /** From pump-on to the overflow's lip. */
  private static Computed<Volume> room(Tank tank) {
    return between(tank, pumpOn(tank), tank.overflowHeight());
  }

  /** What a tank still takes of an overflow: above pump-on, or above the sales outlet. */
  static Computed<Volume> catches(Tank tank) {
    return tank.duty() == Tank.Duty.WATER
        ? room(tank)
        : between(tank, Defaults.outletOf(tank), tank.overflowHeight());
  }

  static Length pumpOn(Tank tank) {
    return tank.pumpOn()
        .orElseGet(() -> Length.ofFeet(tank.overflowHeight().toFeet() * Defaults.PUMP_ON_SHARE));
  }

  /** Half of pump-on where nobody said, so that the band is not nothing. */
  static Length pumpOff(Tank tank) {
    return tank.pumpOff()
        .orElseGet(() -> Length.ofFeet(pumpOn(tank).toFeet() * Defaults.PUMP_OFF_SHARE));
  }

  private Optional<Computed<Time>> runs(Computed<Volume> band) {
    double net = allPumps.toBarrelsPerDay() - water.toBarrelsPerDay();
    return net <= 0
        ? Optional.empty()
        : Optional.of(
            Computed.of(
                Time.ofHours(24 * band.value().toBarrels() / net),
                () ->
                    Working.of(
                            "Hours the pump runs at a stretch",
                            "t",
                            "24*V/(Qp-Qw)",
                            Unit.HOUR,
                            BALANCE,
                            Term.of("V", "band", band.value(), Unit.BARREL),
                            Term.of("Qp", "all pumps", allPumps, Unit.BARREL_PER_DAY),
                            Term.of("Qw", "water a day", water, Unit.BARREL_PER_DAY))
                        .from(List.of(band.working()))));
  }

  private Computed<Time> rests(Computed<Volume> band) {
    return Computed.of(
        Time.ofHours(24 * band.value().toBarrels() / water.toBarrelsPerDay()),
        () ->
            Working.of(
                    "Hours the pump rests",
                    "t",
                    "24*V/Qw",
                    Unit.HOUR,
                    BALANCE,
                    Term.of("V", "band", band.value(), Unit.BARREL),
                    Term.of("Qw", "water a day", water, Unit.BARREL_PER_DAY))
                .from(List.of(band.working())));
  }

  private static Computed<Fraction> starts(Computed<Time> runs, Computed<Time> rests) {
    double hours = runs.value().toHours() + rests.value().toHours();
    return Computed.of(
        Fraction.ofRatio(24 / hours),
        () ->
            Working.of(
                    "Starts a day",
                    "n",
                    "24/(t1+t2)",
                    Unit.ONE,
                    BALANCE,
                    Term.of("t1", "the pump runs", runs.value(), Unit.HOUR),
                    Term.of("t2", "it rests", rests.value(), Unit.HOUR))
                .from(List.of(runs.working(), rests.working())));
  }

  /** At 60 degF: colder oil weighs a per cent more at most. */
  private Computed<Mass> weight() {
    Volume load = load();
    Gravity gravity = study.lease().fluids().oil();
    return Computed.of(
        Mass.ofPounds(load.toBarrels() * gravity.specific() * WATER_POUNDS_A_BARREL),
        () ->
            Working.of(
                "What a load weighs",
                "W",
                "V*SG*350.16",
                Unit.POUND,
                WEIGHT,
                Term.of("V", "what a truck takes", load, Unit.BARREL),
                Term.number("SG", "gravity of the oil at 60 °F", gravity.specific())));
  }

  private static Computed<Volume> between(Tank tank, Length low, Length high) {
    Length top = high.metres() >= low.metres() ? high : low;
    return new RoundTank(tank.diameter()).between(low, top);
  }

  private static Optional<Computed<Volume>> sum(String title, List<Computed<Volume>> parts) {
    if (parts.isEmpty()) {
      return Optional.empty();
    }
    if (parts.size() == 1) {
      return Optional.of(parts.get(0));
    }
    double barrels = parts.stream().mapToDouble(p -> p.value().toBarrels()).sum();
    return Optional.of(Computed.of(Volume.ofBarrels(barrels), () -> sumWorking(title, parts)));
  }

  private static Working sumWorking(String title, List<Computed<Volume>> parts) {
    List<Term> terms = new ArrayList<>();
    StringBuilder formula = new StringBuilder();
    for (int i = 0; i < parts.size(); i++) {
      String symbol = "V" + (i + 1);
      formula.append(i == 0 ? "" : "+").append(symbol);
      terms.add(Term.of(symbol, "tank " + (i + 1), parts.get(i).value(), Unit.BARREL));
    }
    return new Working(
        title,
        "V",
        formula.toString(),
        terms,
        Unit.BARREL,
        Source.definition("sum over the tanks"),
        parts.stream().map(Computed::working).toList());
  }

  private Volume load() {
    Practice practice = study.lease().practice();
    return study.survey().tanks(Tank.Duty.OIL).stream()
        .flatMap(t -> t.load().stream())
        .findFirst()
        .or(practice::load)
        .orElse(Defaults.LOAD);
  }

  private Computed<Time> haul() {
    Volume load = load();
    return Computed.of(
        Time.ofDays(load.toBarrels() / oil.toBarrelsPerDay()),
        () ->
            Working.of(
                "Days between loads",
                "t",
                "L/Qo",
                Unit.DAY_UNIT,
                BALANCE,
                Term.of("L", "what a truck takes", load, Unit.BARREL),
                Term.of("Qo", "oil a day", oil, Unit.BARREL_PER_DAY)));
  }

  private Computed<Time> roadOut(Computed<Volume> usable) {
    Volume load = load();
    double spare = Math.max(0, usable.value().toBarrels() - load.toBarrels());
    return Computed.of(
        Time.ofDays(spare / oil.toBarrelsPerDay()),
        () ->
            Working.of(
                    "Days the road may be out with a load in the tanks",
                    "t",
                    "max(V-L,0)/Qo",
                    Unit.DAY_UNIT,
                    BALANCE,
                    Term.of("V", "usable oil storage", usable.value(), Unit.BARREL),
                    Term.of("L", "what a truck takes", load, Unit.BARREL),
                    Term.of("Qo", "oil a day", oil, Unit.BARREL_PER_DAY))
                .from(List.of(usable.working())));
  }

  private Computed<Volume> needed() {
    Volume load = load();
    Time out = study.lease().practice().roadOut().orElse(Defaults.ROAD_OUT);
    return Computed.of(
        Volume.ofBarrels(load.toBarrels() + oil.toBarrelsPerDay() * out.toDays()),
        () ->
            Working.of(
                "Oil storage needed",
                "V",
                "L+Qo*t",
                Unit.BARREL,
                NEED,
                Term.of("L", "what a truck takes", load, Unit.BARREL),
                Term.of("Qo", "oil a day", oil, Unit.BARREL_PER_DAY),
                Term.of("t", "days the road is out", out, Unit.DAY_UNIT)));
  }
}
