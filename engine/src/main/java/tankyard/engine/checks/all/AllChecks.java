package tankyard.engine.checks.all;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.growth.RunsOutCheck;
import tankyard.engine.checks.gunbarrel.DowncomerCheck;
import tankyard.engine.checks.gunbarrel.FloodsCheck;
import tankyard.engine.checks.gunbarrel.LegSizeCheck;
import tankyard.engine.checks.gunbarrel.NoVentCheck;
import tankyard.engine.checks.gunbarrel.OilTankHighCheck;
import tankyard.engine.checks.gunbarrel.TankHighCheck;
import tankyard.engine.checks.gunbarrel.TouchyCheck;
import tankyard.engine.checks.gunbarrel.WeirCheck;
import tankyard.engine.checks.injection.CheckValveCheck;
import tankyard.engine.checks.injection.HoursCheck;
import tankyard.engine.checks.injection.MotorCheck;
import tankyard.engine.checks.injection.PermitPressureCheck;
import tankyard.engine.checks.injection.PermitRateCheck;
import tankyard.engine.checks.injection.PermitUnknownCheck;
import tankyard.engine.checks.injection.PumpOffCheck;
import tankyard.engine.checks.injection.PumpRateCheck;
import tankyard.engine.checks.injection.PumpReliefCheck;
import tankyard.engine.checks.injection.ReliefHighCheck;
import tankyard.engine.checks.injection.SharedWellCheck;
import tankyard.engine.checks.injection.SuctionCheck;
import tankyard.engine.checks.injection.SuctionUnknownCheck;
import tankyard.engine.checks.lines.CautionsCheck;
import tankyard.engine.checks.lines.ColdLaminarCheck;
import tankyard.engine.checks.lines.CommingledCheck;
import tankyard.engine.checks.lines.GasWearCheck;
import tankyard.engine.checks.lines.GelUnknownCheck;
import tankyard.engine.checks.lines.LineFastCheck;
import tankyard.engine.checks.lines.LineSlowCheck;
import tankyard.engine.checks.lines.PartFullCheck;
import tankyard.engine.checks.lines.PipeNotRatedCheck;
import tankyard.engine.checks.lines.PipeRatingCheck;
import tankyard.engine.checks.lines.PourPointCheck;
import tankyard.engine.checks.lines.RestartCheck;
import tankyard.engine.checks.lines.StaggerCheck;
import tankyard.engine.checks.power.ElectricityCheck;
import tankyard.engine.checks.power.StartTogetherCheck;
import tankyard.engine.checks.power.VoltageDropCheck;
import tankyard.engine.checks.power.WireUnknownCheck;
import tankyard.engine.checks.site.AllOnMissingCheck;
import tankyard.engine.checks.site.AskFirstCheck;
import tankyard.engine.checks.site.AssumedCheck;
import tankyard.engine.checks.site.ConfinedSpaceCheck;
import tankyard.engine.checks.site.DeepTrenchCheck;
import tankyard.engine.checks.site.DiagnosesCheck;
import tankyard.engine.checks.site.DigCheck;
import tankyard.engine.checks.site.GasInTheAirCheck;
import tankyard.engine.checks.site.HotWorkCheck;
import tankyard.engine.checks.site.LightningCheck;
import tankyard.engine.checks.site.SetbackShortCheck;
import tankyard.engine.checks.site.SetbackUnknownCheck;
import tankyard.engine.checks.site.SpillPlanCheck;
import tankyard.engine.checks.tanks.BermCrossedCheck;
import tankyard.engine.checks.tanks.BermHeightCheck;
import tankyard.engine.checks.tanks.BermMissingCheck;
import tankyard.engine.checks.tanks.BermRainCheck;
import tankyard.engine.checks.tanks.BermToBuildCheck;
import tankyard.engine.checks.tanks.LoadCheck;
import tankyard.engine.checks.tanks.OilStorageCheck;
import tankyard.engine.checks.tanks.OverflowFallCheck;
import tankyard.engine.checks.tanks.OverflowMissingCheck;
import tankyard.engine.checks.tanks.OverflowSizeCheck;
import tankyard.engine.checks.tanks.SwitchHeightCheck;
import tankyard.engine.checks.tanks.SwitchMissingCheck;
import tankyard.engine.checks.tanks.SwitchRoomCheck;
import tankyard.engine.checks.tanks.VentCheck;
import tankyard.engine.checks.tanks.VentUnknownCheck;
import tankyard.engine.checks.tanks.WaterHoursCheck;
import tankyard.engine.checks.vessels.BoxLimitCheck;
import tankyard.engine.checks.vessels.CrestGovernsCheck;
import tankyard.engine.checks.vessels.DropsCheck;
import tankyard.engine.checks.vessels.DumpValveBareCheck;
import tankyard.engine.checks.vessels.FiredVesselCheck;
import tankyard.engine.checks.vessels.FloatDrainedCheck;
import tankyard.engine.checks.vessels.FloatFresherCheck;
import tankyard.engine.checks.vessels.FloatWeightCheck;
import tankyard.engine.checks.vessels.HeightsDecideCheck;
import tankyard.engine.checks.vessels.LiquidFullCheck;
import tankyard.engine.checks.vessels.NameplateCheck;
import tankyard.engine.checks.vessels.NotCheckedCheck;
import tankyard.engine.checks.vessels.RegulatorRulesCheck;
import tankyard.engine.checks.vessels.RetentionCheck;
import tankyard.engine.checks.vessels.SettingAboveMostCheck;
import tankyard.engine.checks.vessels.SettingBelowLeastCheck;
import tankyard.engine.checks.vessels.SpringRangeCheck;
import tankyard.engine.checks.vessels.TreaterGasCheck;
import tankyard.engine.checks.vessels.WindowClosedCheck;
import tankyard.engine.lease.Lease;

/** Every rule there is, and what all of them find on one lease. */
public final class AllChecks {
  private static final List<Check> CHECKS =
      List.of(
          new DiagnosesCheck(),
          new AllOnMissingCheck(),
          new LiquidFullCheck(),
          new WindowClosedCheck(),
          new SettingBelowLeastCheck(),
          new SettingAboveMostCheck(),
          new BoxLimitCheck(),
          new RegulatorRulesCheck(),
          new CrestGovernsCheck(),
          new HeightsDecideCheck(),
          new FloatWeightCheck(),
          new FloatFresherCheck(),
          new FloatDrainedCheck(),
          new DumpValveBareCheck(),
          new SpringRangeCheck(),
          new RetentionCheck(),
          new DropsCheck(),
          new TreaterGasCheck(),
          new NotCheckedCheck(),
          new NameplateCheck(),
          new TankHighCheck(),
          new OilTankHighCheck(),
          new WeirCheck(),
          new FloodsCheck(),
          new LegSizeCheck(),
          new DowncomerCheck(),
          new NoVentCheck(),
          new TouchyCheck(),
          new PipeRatingCheck(),
          new RestartCheck(),
          new PourPointCheck(),
          new GelUnknownCheck(),
          new ColdLaminarCheck(),
          new LineFastCheck(),
          new GasWearCheck(),
          new CautionsCheck(),
          new PartFullCheck(),
          new PipeNotRatedCheck(),
          new LineSlowCheck(),
          new CommingledCheck(),
          new StaggerCheck(),
          new OilStorageCheck(),
          new WaterHoursCheck(),
          new OverflowSizeCheck(),
          new OverflowFallCheck(),
          new OverflowMissingCheck(),
          new SwitchHeightCheck(),
          new SwitchRoomCheck(),
          new VentCheck(),
          new VentUnknownCheck(),
          new SwitchMissingCheck(),
          new LoadCheck(),
          new BermHeightCheck(),
          new BermMissingCheck(),
          new BermCrossedCheck(),
          new BermToBuildCheck(),
          new BermRainCheck(),
          new PermitPressureCheck(),
          new PermitRateCheck(),
          new SharedWellCheck(),
          new PermitUnknownCheck(),
          new HoursCheck(),
          new MotorCheck(),
          new PumpRateCheck(),
          new SuctionCheck(),
          new PumpOffCheck(),
          new SuctionUnknownCheck(),
          new RunsOutCheck(),
          new VoltageDropCheck(),
          new WireUnknownCheck(),
          new StartTogetherCheck(),
          new PumpReliefCheck(),
          new ReliefHighCheck(),
          new CheckValveCheck(),
          new AssumedCheck(),
          new GasInTheAirCheck(),
          new HotWorkCheck(),
          new LightningCheck(),
          new ConfinedSpaceCheck(),
          new ElectricityCheck(),
          new FiredVesselCheck(),
          new DigCheck(),
          new DeepTrenchCheck(),
          new SpillPlanCheck(),
          new SetbackShortCheck(),
          new SetbackUnknownCheck(),
          new AskFirstCheck());

  private AllChecks() {}

  /** Every rule, in the order in which like findings are told. */
  public static List<Check> list() {
    return CHECKS;
  }

  /**
   * What all rules find: the worst first, then what concerns the whole lease, then thing by thing
   * in the lease's order. Of one id on one thing only the worst is kept.
   */
  public static List<Finding> look(Evidence evidence) {
    Map<String, Finding> kept = new LinkedHashMap<>();
    for (Check check : CHECKS) {
      for (Finding finding : check.look(evidence)) {
        kept.merge(
            finding.id() + " " + finding.thingId(),
            finding,
            (a, b) -> b.severity().compareTo(a.severity()) < 0 ? b : a);
      }
    }
    List<Finding> found = new ArrayList<>(kept.values());
    Map<String, Integer> place = places(evidence.lease());
    found.sort(
        Comparator.comparing(Finding::severity)
            .thenComparing(f -> place.getOrDefault(f.thingId(), Integer.MAX_VALUE)));
    return List.copyOf(found);
  }

  private static Map<String, Integer> places(Lease lease) {
    Map<String, Integer> place = new HashMap<>();
    place.put("", 0);
    lease.things().forEach(thing -> place.put(thing.id(), place.size()));
    lease.lines().forEach(line -> place.put(line.id(), place.size()));
    return place;
  }
}
