package tankyard.app.example;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Tank;
import tankyard.engine.study.Assumption;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.CaseResultBuilder;
import tankyard.engine.study.InjectionResult;
import tankyard.engine.study.InjectionResultBuilder;
import tankyard.engine.study.OverflowResult;
import tankyard.engine.study.OverflowResultBuilder;
import tankyard.engine.study.SeparatorResult;
import tankyard.engine.study.SeparatorResultBuilder;
import tankyard.engine.study.StorageResult;
import tankyard.engine.study.StorageResultBuilder;
import tankyard.engine.study.SwitchResult;
import tankyard.engine.study.SwitchResultBuilder;
import tankyard.engine.study.WellResult;
import tankyard.engine.study.WellResultBuilder;
import tankyard.engine.study.Yard;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Power;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Results for the small lease, made up by hand so that panels can be tested without the engine. The
 * numbers go together as a person would expect, and no more.
 */
public final class SmallAnswer {
  public static final Source MADE_UP = Source.commonPractice("made up for tests");

  private SmallAnswer() {}

  public static LeaseAnswer answer() {
    return of(SmallLease.lease());
  }

  /** One result for every case the lease has, each case a little harder than the one before. */
  public static LeaseAnswer of(Lease lease) {
    List<CaseResult> cases = new ArrayList<>();
    for (int i = 0; i < lease.cases().size(); i++) {
      cases.add(caseResult(lease, lease.cases().get(i), 1 + 0.35 * i));
    }
    return new LeaseAnswer(
        lease,
        cases,
        List.of(SmallWindow.open()),
        Yard.empty(),
        List.of(),
        Optional.empty(),
        SmallFindings.all(),
        SmallBill.bill(),
        List.of(),
        List.of(
            new Assumption("W1", "runs 24 h a day", MADE_UP),
            new Assumption("S1", "dump valve works at half its travel", MADE_UP),
            new Assumption("", "design water rate is twice the day's average", MADE_UP)));
  }

  /** A number with a working that gives it back. */
  public static <Q extends Quantity> Computed<Q> computed(String title, Q value) {
    Unit unit = UnitSystem.FIELD.unit(value.dimension());
    Working inner =
        Working.of(
            "first part",
            "a",
            "half*whole",
            unit,
            MADE_UP,
            Term.number("half", "one half", 0.5),
            Term.of("whole", "the whole", value, unit));
    Working working =
        Working.of(
                title,
                "x",
                "a + b",
                unit,
                MADE_UP,
                Term.of("a", "first part", value.in(unit) / 2, unit),
                Term.of("b", "second part", value.in(unit) / 2, unit))
            .from(List.of(inner));
    return Computed.of(value, () -> working);
  }

  static Computed<Pressure> psi(String title, double value) {
    return computed(title, Pressure.ofPsi(value));
  }

  private static CaseResult caseResult(Lease lease, DesignCase designCase, double factor) {
    return CaseResultBuilder.builder()
        .designCase(designCase)
        .lines(lease.lines().stream().map(line -> SmallLines.line(line, factor)).toList())
        .wells(lease.wells().stream().map(w -> well(w.id(), factor)).toList())
        .separators(lease.separators().stream().map(s -> separator(s.id(), factor)).toList())
        .storage(storage(factor))
        .gunBarrels(List.of())
        .overflows(
            lease.lines().stream()
                .filter(l -> l.service() == Service.OVERFLOW)
                .map(l -> overflow(l.id(), factor))
                .toList())
        .switches(
            lease.tanks().stream()
                .filter(t -> t.duty() == Tank.Duty.OIL)
                .map(t -> highSwitch(t, factor))
                .toList())
        .breathing(List.of())
        .shared(List.of())
        .suctions(List.of())
        .injections(lease.injectionPumps().stream().map(p -> injection(p.id(), factor)).toList())
        .sharedWells(List.of())
        .cautions(List.of())
        .audits(List.of())
        .build();
  }

  private static WellResult well(String id, double factor) {
    return WellResultBuilder.builder()
        .wellId(id)
        .separatorId("S1")
        .rate(LiquidRate.ofBarrelsPerDay(27 * factor))
        .box(psi("Pressure at the stuffing box", 19.6 * factor))
        .gauge(Pressure.ofPsi(15))
        .lift(Pressure.ofPsi(3.9))
        .friction(Pressure.ofPsi(0.7 * factor))
        .limit(Optional.of(Pressure.ofPsi(60)))
        .build();
  }

  private static SeparatorResult separator(String id, double factor) {
    return SeparatorResultBuilder.builder()
        .separatorId(id)
        .oil(LiquidRate.ofBarrelsPerDay(6 * factor))
        .water(LiquidRate.ofBarrelsPerDay(75 * factor))
        .oilVolume(Volume.ofBarrels(4.4))
        .waterVolume(Volume.ofBarrels(4.4))
        .oilMinutes(Optional.of(computed("Oil time", Time.ofMinutes(1056 / factor))))
        .waterMinutes(Optional.of(computed("Water time", Time.ofMinutes(84 / factor))))
        .designWater(computed("Design water rate", LiquidRate.ofBarrelsPerDay(150 * factor)))
        .build();
  }

  private static StorageResult storage(double factor) {
    return StorageResultBuilder.builder()
        .oilRate(LiquidRate.ofBarrelsPerDay(6 * factor))
        .waterRate(LiquidRate.ofBarrelsPerDay(75 * factor))
        .allFluid(LiquidRate.ofBarrelsPerDay(81 * factor))
        .oilUsable(Optional.of(computed("Usable oil", Volume.ofBarrels(182))))
        .haulInterval(Optional.of(computed("Days between loads", Time.ofDays(30 / factor))))
        .roadOut(Optional.of(computed("Days the road may be out", Time.ofDays(0.33 / factor))))
        .oilNeeded(Optional.of(computed("Oil room needed", Volume.ofBarrels(222))))
        .waterRoom(Optional.of(computed("Water room", Volume.ofBarrels(112))))
        .waterHours(Optional.of(computed("Hours of water", Time.ofHours(35.8 / factor))))
        .build();
  }

  private static OverflowResult overflow(String id, double factor) {
    return OverflowResultBuilder.builder()
        .lineId(id)
        .capacity(computed("Capacity by gravity", LiquidRate.ofBarrelsPerDay(262)))
        .allFluid(LiquidRate.ofBarrelsPerDay(81 * factor))
        .build();
  }

  private static SwitchResult highSwitch(Tank tank, double factor) {
    return SwitchResultBuilder.builder()
        .tankId(tank.id())
        .rate(LiquidRate.ofBarrelsPerDay(81 * factor))
        .height(Optional.of(Length.ofFeet(14)))
        .highest(computed("Highest switch", Length.ofFeet(14.2 / factor)))
        .failsIn(Optional.of(computed("Switch to lip", Time.ofHours(2.1 / factor))))
        .build();
  }

  private static InjectionResult injection(String id, double factor) {
    return InjectionResultBuilder.builder()
        .pumpId(id)
        .wellId("IW1")
        .rate(LiquidRate.ofBarrelsPerDay(200))
        .intoWell(LiquidRate.ofBarrelsPerDay(200))
        .wellhead(psi("Wellhead pressure", 200))
        .discharge(psi("Discharge pressure", 214))
        .lineLoss(Pressure.ofPsi(6.2))
        .power(computed("Power", Power.of(1.04, Unit.HORSEPOWER)))
        .hours(computed("Hours a day", Time.ofHours(9 * factor)))
        .redLine(Optional.of(psi("Red line", 417)))
        .build();
  }
}
