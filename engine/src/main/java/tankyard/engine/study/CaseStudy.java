package tankyard.engine.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import tankyard.engine.fluids.LiquidState;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Vessel;
import tankyard.engine.lease.Well;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;

/** One design case of a surveyed lease: its liquids, its rates, and what follows from them. */
public final class CaseStudy {
  private final Survey survey;
  private final DesignCase designCase;
  private final Temperature ground;
  private final Map<String, WellFlow> wells = new LinkedHashMap<>();
  private final Map<String, String> separatorOf = new LinkedHashMap<>();
  private final Optional<LeaseGas> gas;
  private final Gathering gathering;
  private final GatheringState unloaded;
  private final LiquidState oil;
  private final LiquidState brine;

  public CaseStudy(Survey survey, DesignCase designCase) {
    this.survey = survey;
    this.designCase = designCase;
    this.ground =
        designCase.season() == DesignCase.Season.WINTER
            ? Defaults.groundWinter(survey.lease().site())
            : Defaults.groundSummer(survey.lease().site());
    for (Well well : survey.lease().wells()) {
      if (well.status().stays()) {
        wells.put(well.id(), WellFlow.of(well, designCase));
      }
    }
    this.gas = LeaseGas.of(survey, wells.values());
    this.gathering =
        new Gathering(
            survey.gathering(),
            wells,
            survey.fluids(),
            ground,
            Defaults.heatLoss(survey.lease().practice()),
            designCase.sharedSurgeFactor(),
            gas);
    this.oil = survey.fluids().oil(ground);
    this.brine = survey.fluids().brine(ground);
    this.unloaded = gathering.at(inlets(Map.of()));
    for (String well : unloaded.wellIds()) {
      unloaded.separatorOf(well).ifPresent(s -> separatorOf.put(well, s));
    }
  }

  public Survey survey() {
    return survey;
  }

  public Lease lease() {
    return survey.lease();
  }

  public DesignCase designCase() {
    return designCase;
  }

  /** Temperature of the ground at the lines. */
  public Temperature ground() {
    return ground;
  }

  public LiquidState oil() {
    return oil;
  }

  public LiquidState brine() {
    return brine;
  }

  public VesselHead vessel(Separator separator) {
    return new VesselHead(separator, survey.ground().metresUnder(separator), oil, brine);
  }

  /** Whether the oil floats on the water, as typed and at this case's temperature. */
  boolean oilFloats() {
    return GunBarrelCuts.floats(lease().fluids().oil(), lease().fluids().brine())
        && GunBarrelCuts.floats(oil.gravity().value(), brine.gravity().value());
  }

  GunBarrelHead head(GunBarrel barrel) {
    return GunBarrelHead.of(this, barrel);
  }

  /** What the wells make together, as it stands in a flow line. */
  LiquidState mixOf(List<WellFlow> some) {
    double water = some.stream().mapToDouble(WellFlow::water).sum();
    double all = some.stream().mapToDouble(WellFlow::fluid).sum();
    return survey.fluids().mixture(all > 0 ? water / all : 1, ground);
  }

  /** The gathering lines with every gauge reading nothing. */
  public GatheringState unloaded() {
    return unloaded;
  }

  /**
   * The gathering lines for given gauge readings, in Pa by separator; a separator not named reads
   * nothing.
   */
  public GatheringState gatheringAt(Map<String, Double> gaugePa) {
    return gathering.at(inlets(gaugePa), unloaded);
  }

  private Map<String, Double> inlets(Map<String, Double> gaugePa) {
    Map<String, Double> inlet = new LinkedHashMap<>();
    for (Separator separator : survey.separators()) {
      VesselHead head = vessel(separator);
      double inletM = head.groundM() + separator.inletHeight().metres();
      inlet.put(
          separator.id(), gaugePa.getOrDefault(separator.id(), 0.0) + head.fromGaugeTo(inletM));
    }
    for (GunBarrel barrel : survey.gunBarrels()) {
      inlet.put(barrel.id(), head(barrel).atInlet().value().pascals());
    }
    return inlet;
  }

  /** What a well's way to a vessel adds; empty where it leads elsewhere or nowhere. */
  public Optional<WellLoad> load(String wellId, GatheringState state, Vessel into) {
    if (!into.id().equals(separatorOf.get(wellId))) {
      return Optional.empty();
    }
    return Optional.of(load(wellId, into, state.wayOf(wellId)));
  }

  /**
   * The same way with the gauge at another reading. Only where the flows on it do not change with
   * it: no loop.
   */
  public WellLoad loadAt(WellLoad load, Separator separator, double gaugePa) {
    double down = gaugePa + fromGaugeToInlet(separator);
    List<LineRun> way = new ArrayList<>(load.way());
    for (int i = way.size() - 1; i >= 0; i--) {
      way.set(i, way.get(i).from(down));
      down = way.get(i).march().upstreamPascals();
    }
    return load(load.wellId(), separator, way);
  }

  private WellLoad load(String wellId, Vessel into, List<LineRun> way) {
    double lift = fromGaugeToInlet(into);
    double friction = 0;
    boolean cut = false;
    for (int i = way.size() - 1; i >= 0; i--) {
      LineRun run = way.get(i);
      boolean crest = run.march().control().isPresent();
      cut |= crest;
      lift = (crest ? 0 : lift) + run.march().staticPascals();
      friction = (crest ? 0 : friction) + run.march().frictionPascals();
    }
    return new WellLoad(wellId, lift, friction, way.get(0).liquid().liquid(), !cut, way);
  }

  /**
   * What stands against the wells: the gauge's reading, or the weight over a gun barrel's inlet.
   */
  double holdsPa(Vessel vessel, Map<String, Double> gaugePa) {
    return vessel instanceof GunBarrel barrel
        ? head(barrel).atInlet().value().pascals()
        : gaugePa.getOrDefault(vessel.id(), 0.0);
  }

  /** What the liquid between gauge and inlet adds; a gun barrel has no gauge. */
  double fromGaugeToInlet(Vessel vessel) {
    if (vessel instanceof Separator separator) {
      VesselHead head = vessel(separator);
      return head.fromGaugeTo(head.groundM() + separator.inletHeight().metres());
    }
    return 0;
  }

  List<WellFlow> wellsOf(String separatorId) {
    return wells.values().stream()
        .filter(w -> separatorId.equals(separatorOf.get(w.well().id())))
        .toList();
  }

  List<WellFlow> wells() {
    return List.copyOf(wells.values());
  }

  WellFlow well(String id) {
    return wells.get(id);
  }

  /** The rate a vessel's water leg must carry. */
  public Computed<LiquidRate> designWater(Vessel vessel) {
    return DesignWater.of(this, vessel);
  }

  /** Oil into a vessel in this case, m3/s. */
  public double oilInto(Vessel vessel) {
    return into(vessel, WellFlow::oil);
  }

  /** Water into a vessel in this case, m3/s. */
  double waterInto(Vessel vessel) {
    return into(vessel, WellFlow::water);
  }

  /** Gas into a vessel in this case, standard m3/s. */
  double gasInto(Vessel vessel) {
    return into(vessel, WellFlow::gas);
  }

  private double into(Vessel vessel, ToDoubleFunction<WellFlow> part) {
    return wellsOf(vessel.id()).stream().mapToDouble(part).sum();
  }

  /** The vessels from which a way of that service leads to a tank. */
  List<Vessel> feeding(Tank tank, Service service) {
    return survey.vessels().stream()
        .filter(
            vessel ->
                Leg.of(survey, vessel, service).stream()
                    .anyMatch(leg -> leg.tank().id().equals(tank.id())))
        .toList();
  }

  /** Whether any well sends gas with its liquid. */
  public boolean hasGas() {
    return gas.isPresent();
  }

  Optional<LeaseGas> gas() {
    return gas;
  }

  /** Oil and water of all wells in this case. */
  public LiquidRate allFluid() {
    return barrels(wells.values().stream().mapToDouble(WellFlow::fluid).sum());
  }

  /** Oil of all wells in this case. */
  public LiquidRate allOil() {
    return barrels(wells.values().stream().mapToDouble(WellFlow::oil).sum());
  }

  /** Water of all wells in this case. */
  public LiquidRate allWater() {
    return barrels(wells.values().stream().mapToDouble(WellFlow::water).sum());
  }

  /** Water of all wells on the day's average. */
  public LiquidRate waterDay() {
    return barrels(wells.values().stream().mapToDouble(WellFlow::waterDay).sum());
  }

  /** Every water leg of a vessel at the design rate. */
  public List<LegRun> waterLegs(Vessel vessel) {
    String words = vessel instanceof GunBarrel ? "surge through the leg" : "design water rate";
    return legs(
        vessel,
        Service.WATER_LEG,
        v -> designWater(v).value().cubicMetresPerSecond(),
        words,
        brine);
  }

  /** Every oil leg of a vessel at the oil rate of this case. */
  public List<LegRun> oilLegs(Vessel vessel) {
    String words = "the " + vessel.kind() + "'s oil";
    return legs(vessel, Service.OIL_LEG, this::oilInto, words, oil);
  }

  private List<LegRun> legs(
      Vessel vessel,
      Service service,
      ToDoubleFunction<Vessel> rate,
      String words,
      LiquidState liquid) {
    Map<String, Double> beside = SharedLegs.beside(survey, vessel, service, rate);
    double own = rate.applyAsDouble(vessel);
    return Leg.of(survey, vessel, service).stream()
        .map(
            leg ->
                LegRun.of(leg, own, words, liquid, survey.ground().metresUnder(leg.tank()), beside))
        .toList();
  }

  static LiquidRate barrels(double cubicMetresPerSecond) {
    return LiquidRate.of(Unit.BARREL_PER_DAY.fromSi(cubicMetresPerSecond), Unit.BARREL_PER_DAY);
  }
}
