package tankyard.engine.leasefile;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import tankyard.engine.lease.Fluids;
import tankyard.engine.lease.Fluids.MeasuredViscosity;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.GunBarrelBuilder;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.OwnPipe;
import tankyard.engine.lease.Regulator;
import tankyard.engine.lease.RegulatorBuilder;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.SeparatorBuilder;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.TankBuilder;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Unknowns;
import tankyard.engine.units.Amount;
import tankyard.engine.units.Length;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Viscosity;

/**
 * Makes up leases with everything in them that a file may hold: every record, every unit, odd text.
 * Fields are found on the records, so a new field takes part by itself.
 */
final class RandomLease {
  private static final String[] TEXTS = {
    "",
    "Well 1",
    "Grüne \"Wiese\"",
    "tab\there\nand a line",
    "back\\slash /~",
    "\u0001",
    "油井 🛢",
    " "
  };

  private final Random random;
  private int ids;
  private List<String> things = List.of();

  private RandomLease(long seed) {
    random = new Random(seed);
  }

  static Lease of(long seed) {
    return new RandomLease(seed).lease();
  }

  private Lease lease() {
    Lease lease = (Lease) record(Lease.class);
    things = lease.things().filter(Thing::takesLines).map(Thing::id).toList();
    if (things.size() < 2) {
      return lease().withUnknowns(Unknowns.none());
    }
    for (int i = 0; i < 5; i++) {
      lease = lease.with((Line) record(Line.class));
    }
    return lease;
  }

  private Object record(Class<?> type) {
    RecordComponent[] components = type.getRecordComponents();
    Object[] values = new Object[components.length];
    for (int i = 0; i < components.length; i++) {
      RecordShape.Field field = RecordShape.of(type).fields().get(components[i].getName());
      values[i] = field == null ? Unknowns.none() : field(type, field);
    }
    try {
      var constructor =
          type.getDeclaredConstructor(
              Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
      return sensible(constructor.newInstance(values));
    } catch (InvocationTargetException e) {
      throw new IllegalStateException(type + " refused " + Arrays.toString(values), e.getCause());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private Object field(Class<?> owner, RecordShape.Field field) {
    if (field.optional()) {
      return random.nextInt(3) == 0 ? Optional.empty() : Optional.of(value(owner, field));
    }
    if (!field.list()) {
      return value(owner, field);
    }
    List<Object> items = new ArrayList<>();
    int size = field.type() == Line.class ? 0 : random.nextInt(4) + fewest(field);
    for (int i = 0; i < size; i++) {
      items.add(value(owner, field));
    }
    return items;
  }

  private static int fewest(RecordShape.Field field) {
    return field.name().equals("corners") ? 3 : 0;
  }

  private Object value(Class<?> owner, RecordShape.Field field) {
    Class<?> type = field.type();
    Optional<QuantityKind<?>> kind = QuantityKind.of(type);
    if (kind.isPresent()) {
      return quantity(kind.get(), Limits.of(owner, field.name()).orElseThrow());
    }
    if (type.isRecord()) {
      return record(type);
    }
    if (type.isEnum()) {
      return type.getEnumConstants()[random.nextInt(type.getEnumConstants().length)];
    }
    if (type == String.class) {
      return text(field);
    }
    if (type == BigDecimal.class) {
      return new BigDecimal(BigInteger.valueOf(random.nextInt(1_000_000)), random.nextInt(7) - 2);
    }
    if (type == LocalDate.class) {
      return LocalDate.ofEpochDay(random.nextInt(30_000));
    }
    return type == int.class ? (Object) (1 + random.nextInt(99)) : (Object) number(0, 1e6);
  }

  private String text(RecordShape.Field field) {
    return switch (field.name()) {
      case "id" -> "id/" + ids++ + "~é";
      case "from" -> things.get(0);
      case "to" -> things.get(1);
      case "currency" -> "USD";
      case "covers", "fitting" -> "part-" + random.nextInt(1000);
      default -> TEXTS[random.nextInt(TEXTS.length)];
    };
  }

  private Quantity quantity(QuantityKind<?> kind, Limit limit) {
    List<Unit> units =
        Arrays.stream(Unit.values()).filter(u -> u.dimension() == kind.dimension()).toList();
    Unit unit = units.get(random.nextInt(units.size()));
    double one = unit.fromSi(limit.unit().toSi(limit.least()));
    double other = unit.fromSi(limit.unit().toSi(limit.most()));
    return kind.make().apply(new Amount(number(Math.min(one, other), Math.max(one, other)), unit));
  }

  /** Round ones as people type them, and ones with all their digits as conversions leave them. */
  private double number(double least, double most) {
    double any = least + (most - least) * random.nextDouble();
    double whole = Math.rint(any);
    return random.nextBoolean() && whole >= least && whole <= most ? whole : any;
  }

  /** Its measurements dealt so that the oil thins as it warms; none where no law takes them. */
  private static Fluids thinning(Fluids f) {
    List<Temperature> warmer =
        f.oilViscosity().stream()
            .map(MeasuredViscosity::temperature)
            .sorted(Comparator.comparingDouble(Temperature::kelvins))
            .toList();
    List<Viscosity> thicker =
        f.oilViscosity().stream()
            .map(MeasuredViscosity::viscosity)
            .sorted(Comparator.comparingDouble(Viscosity::pascalSeconds))
            .toList();
    List<MeasuredViscosity> points = new ArrayList<>();
    for (int i = 0; i < warmer.size(); i++) {
      Viscosity thinner = thicker.get(thicker.size() - 1 - i);
      points.add(new MeasuredViscosity(warmer.get(i), thinner));
    }
    Fluids made = measured(f, points);
    return FluidRules.complaints(made, "").isEmpty() ? made : measured(f, List.of());
  }

  private static Fluids measured(Fluids f, List<MeasuredViscosity> points) {
    return new Fluids(
        f.oil(),
        f.brine(),
        points,
        f.pourPoint(),
        f.gelStrength(),
        f.inversion(),
        f.tightness(),
        f.gasGravity());
  }

  /** Turns values that contradict each other into ones that can stand together. */
  private Object sensible(Object made) {
    if (made instanceof Tank tank) {
      return tank(tank);
    }
    if (made instanceof Separator s) {
      return separator(s);
    }
    if (made instanceof GunBarrel g) {
      return gunBarrel(g);
    }
    if (made instanceof Regulator r) {
      return RegulatorBuilder.builder()
          .model(r.model())
          .setting(r.setting())
          .buildUp(r.buildUp())
          .rangeHigh(r.rangeHigh())
          .cv(r.cv())
          .build();
    }
    if (made instanceof Fluids f) {
      return thinning(f);
    }
    if (made instanceof OwnPipe p) {
      return new OwnPipe(
          p.id(),
          p.name(),
          p.bore(),
          p.outside().map(o -> part(p.bore(), 1.1)),
          p.roughness(),
          p.ratingWater(),
          p.ratingOil());
    }
    return made instanceof Line line ? line(line) : made;
  }

  private static Length part(Length whole, double share) {
    return Length.of(whole.typed().value() * share, whole.typed().unit());
  }

  private static Tank tank(Tank t) {
    return TankBuilder.builder()
        .id(t.id())
        .name(t.name())
        .at(t.at())
        .ground(t.ground())
        .status(t.status())
        .duty(t.duty())
        .model(t.model())
        .diameter(t.diameter())
        .shellHeight(t.shellHeight())
        .overflowHeight(part(t.shellHeight(), 0.9))
        .inletHeight(part(t.shellHeight(), t.entry() == Tank.Entry.TOP ? 1.05 : 0.1))
        .entry(t.entry())
        .outletHeight(t.outletHeight().map(h -> part(t.shellHeight(), 0.2)))
        .switchHeight(t.switchHeight().map(h -> part(t.shellHeight(), 0.8)))
        .pumpOn(t.pumpOn().map(h -> part(t.shellHeight(), 0.6)))
        .pumpOff(t.pumpOff().map(h -> part(t.shellHeight(), 0.3)))
        .load(t.load())
        .build();
  }

  private static Separator separator(Separator s) {
    Length level = Length.ofFeet(Math.abs(s.interfaceHeight().toFeet()) / 2);
    return SeparatorBuilder.builder()
        .id(s.id())
        .name(s.name())
        .at(s.at())
        .ground(s.ground())
        .status(s.status())
        .model(s.model())
        .shape(s.shape())
        .diameter(s.diameter())
        .length(s.length())
        .bottomHeight(s.bottomHeight().map(h -> level))
        .inletHeight(s.inletHeight())
        .interfaceHeight(level)
        .gaugeHeight(s.gaugeHeight())
        .oilOutletHeight(part(level, 1.5))
        .waterOutletHeight(part(level, 0.5))
        .nameplate(s.nameplate())
        .relief(s.relief())
        .gaugeRange(s.gaugeRange())
        .dumpValve(s.dumpValve())
        .regulator(s.regulator())
        .build();
  }

  private static GunBarrel gunBarrel(GunBarrel g) {
    return GunBarrelBuilder.builder(g)
        .oilOutletHeight(part(g.shellHeight(), 0.9))
        .interfaceHeight(part(g.shellHeight(), 0.5))
        .weirHeight(g.weirHeight().map(h -> part(g.shellHeight(), 0.8)))
        .build();
  }

  /** From a thing to one later on the way, so that no line runs backwards or in a ring. */
  private Line line(Line line) {
    int from = random.nextInt(things.size() - 1);
    int to = from + 1 + random.nextInt(things.size() - from - 1);
    return line.withEnds(things.get(from), things.get(to));
  }
}
