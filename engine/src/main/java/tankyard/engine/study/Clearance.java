package tankyard.engine.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.PowerPole;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Vessel;
import tankyard.engine.lease.Well;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * How far a tank, vessel or pump stands clear of what it must keep away from, as it is drawn: from
 * shell to shell, a separator that lies taken as round as it is long. What each must be is for the
 * local code, the fire marshal and the landowner to say.
 *
 * @param from the thing it is of
 * @param to the nearest of its kind
 * @param clear nothing where the two overlap
 */
public record Clearance(String from, Kind kind, String to, Computed<Length> clear) {
  private static final Source SOURCE =
      Source.definition("straight on the map, less half of what stands at either end");

  /** What is kept away from. */
  public enum Kind {
    TANK("tank", t -> t instanceof Tank || t instanceof GunBarrel),
    SEPARATOR("separator", t -> t instanceof Separator),
    WELL("well", t -> t instanceof Well || t instanceof InjectionWell),
    SPARK("motor or pole", t -> t instanceof InjectionPump || t instanceof PowerPole);

    private final String words;
    private final Predicate<Thing> fits;

    Kind(String words, Predicate<Thing> fits) {
      this.words = words;
      this.fits = fits;
    }

    public String words() {
      return words;
    }
  }

  /** Of every tank, vessel and pump that stays, thing by thing. */
  public static List<Clearance> of(Lease lease) {
    List<Thing> all = lease.things().filter(t -> t.status().stays()).toList();
    List<Clearance> clear = new ArrayList<>();
    for (Thing thing : all) {
      if (thing instanceof Tank || thing instanceof Vessel || thing instanceof InjectionPump) {
        Arrays.stream(Kind.values())
            .flatMap(kind -> nearest(thing, kind, all).stream())
            .forEach(clear::add);
      }
    }
    return clear;
  }

  private static Optional<Clearance> nearest(Thing thing, Kind kind, List<Thing> all) {
    return all.stream()
        .filter(kind.fits)
        .filter(other -> !other.id().equals(thing.id()))
        .map(other -> new Clearance(thing.id(), kind, other.id(), clear(thing, other)))
        .min(Comparator.comparingDouble(c -> c.clear().value().metres()));
  }

  private static Computed<Length> clear(Thing a, Thing b) {
    double apartM = a.at().metresTo(b.at());
    return Computed.of(
        LaidLine.feet(Math.max(0, apartM - radiusM(a) - radiusM(b))),
        () ->
            Working.of(
                "Distance from shell to shell",
                "d",
                "max(D-a-b,0)",
                Unit.FOOT,
                SOURCE,
                Term.of("D", "from middle to middle", LaidLine.feet(apartM), Unit.FOOT),
                Term.of("a", "half of " + a.name(), LaidLine.feet(radiusM(a)), Unit.FOOT),
                Term.of("b", "half of " + b.name(), LaidLine.feet(radiusM(b)), Unit.FOOT)));
  }

  /** Half of what a thing covers on the map; nothing for what has no size there. */
  public static Length half(Thing thing) {
    return LaidLine.feet(radiusM(thing));
  }

  static double radiusM(Thing thing) {
    if (thing instanceof Tank tank) {
      return tank.diameter().metres() / 2;
    }
    if (thing instanceof GunBarrel barrel) {
      return barrel.diameter().metres() / 2;
    }
    if (thing instanceof Separator separator) {
      boolean lies = separator.shape() == Separator.Shape.HORIZONTAL;
      return (lies ? separator.length() : separator.diameter()).metres() / 2;
    }
    return 0;
  }
}
