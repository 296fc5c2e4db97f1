package tankyard.engine.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.fluids.BrineSpec;
import tankyard.engine.fluids.EmulsionSpec;
import tankyard.engine.fluids.FluidModel;
import tankyard.engine.fluids.OilSpec;
import tankyard.engine.fluids.Tightness;
import tankyard.engine.fluids.ViscosityPoint;
import tankyard.engine.lease.Fluids;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Tee;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Vessel;

/** What is the same in every design case: the ground, the laid lines, who leads where. */
public final class Survey {
  private final Lease lease;
  private final Catalog catalog;
  private final LeaseGround ground;
  private final Map<String, LaidLine> laid = new LinkedHashMap<>();
  private final GatheringPlan gathering;
  private final OilSpec oilSpec;
  private final FluidModel fluids;
  private final List<Diagnosis> diagnoses = new ArrayList<>();
  private final Map<String, Thing> staying = new HashMap<>();

  private Survey(Lease lease, Catalog catalog) {
    this.lease = lease;
    this.ground = LeaseGround.of(lease);
    lease.things().filter(t -> t.status().stays()).forEach(t -> staying.put(t.id(), t));
    this.catalog = catalog.withOwnPipes(lease.ownPipes());
    LineLayer layer = new LineLayer(lease.practice(), staying, this.catalog, ground);
    for (Line line : lease.lines()) {
      if (stays(line)) {
        layer
            .lay(line)
            .ifPresentOrElse(l -> laid.put(line.id(), l), () -> diagnoses.add(noPipe(line)));
      }
    }
    this.gathering = new GatheringPlan(lease, laid);
    this.oilSpec = oil(lease.fluids());
    this.fluids = model(lease.fluids(), oilSpec);
    diagnoses.addAll(Gaps.of(this));
  }

  public static Survey of(Lease lease, Catalog catalog) {
    return new Survey(lease, catalog);
  }

  private boolean stays(Line line) {
    return line.status().stays()
        && staying.containsKey(line.from())
        && staying.containsKey(line.to());
  }

  private static Diagnosis noPipe(Line line) {
    return new Diagnosis(
        "pipe-unknown",
        line.id(),
        line.name()
            + " is laid with \""
            + line.pipe()
            + "\", which no catalogue lists: choose a pipe, or add it with its bore to the lease's"
            + " own pipes.");
  }

  private static OilSpec oil(Fluids fluids) {
    List<ViscosityPoint> measured =
        fluids.oilViscosity().stream()
            .map(p -> new ViscosityPoint(p.temperature(), p.viscosity()))
            .toList();
    return new OilSpec(fluids.oil(), measured);
  }

  private static FluidModel model(Fluids fluids, OilSpec oil) {
    return new FluidModel(
        oil,
        new BrineSpec(fluids.brine()),
        new EmulsionSpec(
            fluids.inversion().orElse(Defaults.INVERSION),
            fluids.tightness().map(Survey::tightness)));
  }

  private static Tightness tightness(Fluids.Tightness said) {
    return switch (said) {
      case LOOSE -> Tightness.LOOSE;
      case MEDIUM -> Tightness.MEDIUM;
      case TIGHT -> Tightness.TIGHT;
    };
  }

  public Lease lease() {
    return lease;
  }

  /** What can be bought, the lease's own pipes included. */
  public Catalog catalog() {
    return catalog;
  }

  public LeaseGround ground() {
    return ground;
  }

  /** Every line that stays and whose pipe is known, by id, in drawn order. */
  public Map<String, LaidLine> laid() {
    return laid;
  }

  GatheringPlan gathering() {
    return gathering;
  }

  OilSpec oilSpec() {
    return oilSpec;
  }

  FluidModel fluids() {
    return fluids;
  }

  /** What keeps parts of the lease from being worked out. */
  public List<Diagnosis> diagnoses() {
    return List.copyOf(diagnoses);
  }

  /** Separators that stay. */
  public List<Separator> separators() {
    return lease.separators().stream().filter(s -> s.status().stays()).toList();
  }

  /** Gun barrels that stay. */
  public List<GunBarrel> gunBarrels() {
    return lease.gunBarrels().stream().filter(g -> g.status().stays()).toList();
  }

  /** Separators and gun barrels that stay. */
  public List<Vessel> vessels() {
    return lease.vessels().filter(v -> v.status().stays()).toList();
  }

  /** One of them; empty where it is none, or does not stay. */
  Optional<Vessel> vessel(String id) {
    return Optional.ofNullable(staying.get(id))
        .filter(Vessel.class::isInstance)
        .map(Vessel.class::cast);
  }

  /** Tanks of a duty that stay and that some line reaches: one that stands alone holds nothing. */
  public List<Tank> tanks(Tank.Duty duty) {
    return lease.tanks().stream()
        .filter(t -> t.status().stays() && t.duty() == duty)
        .filter(t -> laid.values().stream().anyMatch(l -> l.line().touches(t.id())))
        .toList();
  }

  Optional<Tank> tank(String id) {
    return lease.tanks().stream().filter(t -> t.id().equals(id)).findFirst();
  }

  boolean isTee(String id) {
    return lease.tees().stream().map(Tee::id).anyMatch(id::equals);
  }
}
