package tankyard.engine.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.fluids.EmulsionSpec;
import tankyard.engine.lease.Berm;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MotorDriven;
import tankyard.engine.lease.Practice;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Well;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.working.Source;

/** Every value the study takes because nobody typed one. */
public final class Assumptions {
  private final List<Assumption> found = new ArrayList<>();

  private final boolean oilCarries;

  private Assumptions(boolean oilCarries) {
    this.oilCarries = oilCarries;
  }

  /**
   * Of a worked lease.
   *
   * @param cases what came of it: some values are only asked for where a line carries what they
   *     belong to
   */
  public static List<Assumption> of(Lease lease, List<CaseResult> cases) {
    Assumptions assumptions =
        new Assumptions(
            cases.stream()
                .flatMap(c -> c.lines().stream())
                .filter(LineResult::oilCarries)
                .anyMatch(l -> EmulsionSpec.isLawOf(l.viscosity().working())));
    assumptions.ofLease(lease);
    lease.wells().stream()
        .filter(w -> w.status().stays())
        .forEach(w -> assumptions.ofWell(lease, w));
    lease.separators().stream()
        .filter(s -> s.status().stays())
        .forEach(s -> assumptions.ofSeparator(lease, s));
    lease.injectionPumps().stream()
        .filter(p -> p.status().stays())
        .filter(p -> isFed(lease, p))
        .forEach(p -> assumptions.ofPump(lease, p));
    lease.injectionWells().stream()
        .filter(w -> w.status().stays())
        .forEach(assumptions::ofInjectionWell);
    lease.gunBarrels().stream().filter(g -> g.status().stays()).forEach(assumptions::ofGunBarrel);
    lease.tanks().stream().filter(t -> t.status().stays()).forEach(assumptions::ofTank);
    lease.berms().stream().filter(b -> b.status().stays()).forEach(assumptions::ofBerm);
    return List.copyOf(assumptions.found);
  }

  private void ofLease(Lease lease) {
    missing("", lease.site().groundSummer(), "ground in summer at", Defaults.GROUND_SUMMER);
    missing("", lease.site().groundWinter(), "ground in winter at", Defaults.GROUND_WINTER);
    Practice practice = lease.practice();
    missing("", practice.designWater(), "design water over the average", Defaults.DESIGN_WATER);
    missing("", practice.margin(), "margin on the least", Defaults.MARGIN);
    missing(
        "",
        practice.reliefShare(),
        "gauge kept below, of the relief setting",
        Defaults.RELIEF_SHARE);
    missing("", practice.depth(), "lines buried", Defaults.DEPTH);
    missing("", practice.load(), "a truck takes", Defaults.LOAD);
    if (lease.tanks().stream()
        .anyMatch(
            t -> t.status().stays() && t.duty() == Tank.Duty.OIL && t.ventBore().isPresent())) {
      missing("", practice.truckDraws(), "a truck's pump draws", Defaults.TRUCK_DRAWS);
    }
    missing("", practice.roadOut(), "the road may be out", Defaults.ROAD_OUT);
    if (lease.wells().stream().anyMatch(w -> w.headTemperature().isPresent())) {
      missing("", practice.heatLoss(), "buried lines lose", Defaults.HEAT_LOSS);
    }
    if (practice.waterDoubles().isPresent()) {
      missing("", practice.pumpShare(), "act when the pumps run, of the day", Defaults.PUMP_SHARE);
    }
    missing("", practice.nightOut(), "nobody looks for", Defaults.NIGHT_OUT);
    missing("", practice.reaction(), "wells stand still after a high switch", Defaults.REACTION);
    missing(
        "", practice.atOnce(), "a shared line's rate not passed, of the time", Defaults.AT_ONCE);
    if (practice.treatAt().isPresent()) {
      missing(
          "",
          practice.treaterWater(),
          "part of the water that comes to a treater",
          Defaults.TREATER_WATER);
      missing(
          "",
          practice.treaterEfficiency(),
          "a treater gives on, of its heat",
          Defaults.TREATER_EFFICIENCY);
    }
    if (lease.wells().stream().anyMatch(w -> w.gas().filter(g -> g.typed().si() > 0).isPresent())) {
      missing("", lease.fluids().gasGravity(), "gas over air, by weight", Defaults.GAS_GRAVITY);
      found.add(new Assumption("", "surface tension of oil and gas 25 dyn/cm", Defaults.HABIT));
      missing("", lease.site().altitude(), "stands above sea level by", Defaults.ALTITUDE);
    }
    if (oilCarries) {
      missing(
          "",
          lease.fluids().inversion(),
          "water carries the oil from a water cut of",
          Defaults.INVERSION);
      if (lease.fluids().tightness().isEmpty()) {
        found.add(
            new Assumption(
                "", "emulsion as thick as Guth and Simha's law makes it", Defaults.HABIT));
      }
    }
    if (lease.fluids().oilViscosity().size() < 2) {
      found.add(
          new Assumption(
              "",
              "oil viscosity from its gravity, not measured at two temperatures",
              Defaults.HABIT));
    }
  }

  private void ofWell(Lease lease, Well well) {
    if (well.headTemperature().isEmpty()) {
      found.add(new Assumption(well.id(), "its fluid comes as cold as the ground", Defaults.HABIT));
    }
    missing(well.id(), well.runsPerDay(), "runs a day", Defaults.RUNS_PER_DAY);
    missing(well.id(), well.surge(), "stroke peak over the mean", Defaults.SURGE);
    ofMotor(lease, well);
  }

  private void ofMotor(Lease lease, MotorDriven driven) {
    boolean bySize = driven.motor().isPresent() && driven.motorAmps().isEmpty();
    if (bySize && lease.poleNearest(driven.at()).isPresent()) {
      found.add(
          new Assumption(
              driven.id(),
              "its motor draws what the table says",
              Source.memory("amps of motors by size")));
    }
  }

  private void ofSeparator(Lease lease, Separator separator) {
    if (separator.dumpValve().floatBall().isPresent()
        && separator.dumpValve().port().isPresent()
        && lease.fluids().brine().specific() > Defaults.OTHER_WATER.specific()) {
      missing(
          separator.id(),
          separator.otherWater(),
          "a flood freshens its water to",
          Defaults.OTHER_WATER);
    }
    missing(
        separator.id(),
        separator.dumpValve().workingTravel(),
        "dump valve works at a travel of",
        tankyard.engine.valves.ValveLoss.USUAL_TRAVEL);
    missing(
        separator.id(), separator.regulator().buildUp(), "regulator builds up", Defaults.BUILD_UP);
    if (separator.bottomHeight().isEmpty()) {
      found.add(new Assumption(separator.id(), "interface stands mid-vessel", Defaults.HABIT));
    }
  }

  private void ofInjectionWell(InjectionWell well) {
    if (well.otherRate().isPresent()) {
      missing(well.id(), well.otherHours(), "the other lease pumps a day", Defaults.OTHER_HOURS);
    }
  }

  private void ofBerm(Berm berm) {
    missing(berm.id(), berm.rain(), "rain it must also hold", Defaults.BERM_RAIN);
    missing(berm.id(), berm.freeboard(), "freeboard over all that", Defaults.FREEBOARD);
  }

  private static boolean isFed(Lease lease, InjectionPump pump) {
    return lease.linesOf(pump.id()).anyMatch(l -> l.service() == Service.SUCTION);
  }

  private void ofPump(Lease lease, InjectionPump pump) {
    if (pump.plungers().isEmpty()) {
      found.add(new Assumption(pump.id(), "a triplex, single-acting", Defaults.HABIT));
    }
    missing(pump.id(), pump.speed(), "turns at", Defaults.PUMP_SPEED);
    if (pump.plunger().isPresent() && pump.stroke().isPresent()) {
      missing(pump.id(), pump.slip(), "slips", Defaults.PUMP_SLIP);
      if (pump.sheave().isPresent()) {
        missing(pump.id(), pump.motorSpeed(), "motor turns at", Defaults.MOTOR_SPEED);
      }
    }
    missing(pump.id(), lease.site().altitude(), "stands above sea level by", Defaults.ALTITUDE);
    ofMotor(lease, pump);
  }

  private void ofGunBarrel(GunBarrel barrel) {
    if (barrel.legLength().isEmpty()) {
      found.add(
          new Assumption(
              barrel.id(),
              "leg twice as long as its weir is high, fittings included",
              Defaults.HABIT));
    }
    if (barrel.downcomerPipe().isEmpty()) {
      found.add(
          new Assumption(barrel.id(), "downcomer and its tee as wide as the leg", Defaults.HABIT));
    }
    if (barrel.vent().isEmpty()) {
      found.add(new Assumption(barrel.id(), "leg vented at its top", Defaults.HABIT));
    }
  }

  private void ofTank(Tank tank) {
    if (tank.duty() == Tank.Duty.OIL) {
      missing(
          tank.id(), tank.outletHeight(), "sales outlet above the bottom", Defaults.SALES_OUTLET);
      missing(tank.id(), tank.switchHeight(), "high switch at", Storage.switchHeight(tank));
    } else {
      missing(tank.id(), tank.pumpOn(), "pump starts at", Storage.pumpOn(tank));
      missing(tank.id(), tank.pumpOff(), "pump stops at", Storage.pumpOff(tank));
    }
  }

  private void missing(
      String thingId, Optional<? extends Quantity> typed, String words, Quantity taken) {
    if (typed.isEmpty()) {
      String value =
          taken.dimension() == Dimension.TIME || taken.dimension() == Dimension.FRACTION
              ? tankyard.engine.units.AmountText.print(taken.typed())
              : UnitSystem.FIELD.print(taken, 3);
      found.add(new Assumption(thingId, words + " " + value, Defaults.HABIT));
    }
  }
}
