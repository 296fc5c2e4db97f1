package tankyard.engine.catalog;

import java.util.Locale;
import java.util.Optional;
import tankyard.engine.lease.OwnPipe;
import tankyard.engine.units.Length;
import tankyard.engine.working.Source;

/** Turns a pipe typed in a lease into one like the catalogue's. */
final class OwnPipes {
  /** Plastics are taken as smooth: 0.000005 ft (common tables, from memory). */
  private static final Length SMOOTH = Length.ofFeet(0.000005);

  /** A wall of a tenth of the bore is assumed where only the bore was typed; it is only drawn. */
  private static final double OUTSIDE_OVER_BORE = 1.2;

  private static final double HAZEN_WILLIAMS_C = 140;
  private static final Length FOOT = Length.ofFeet(1);

  private OwnPipes() {}

  static Pipe pipe(OwnPipe own) {
    Optional<NominalSize> named = own.outside().flatMap(NominalSize::ofOutside);
    return new Pipe(
        own.id(),
        own.name(),
        material(own.name()),
        named.orElseGet(() -> NominalSize.nearBore(own.bore())),
        own.outside().orElseGet(() -> Length.ofInches(own.bore().toInches() * OUTSIDE_OVER_BORE)),
        own.bore(),
        own.roughness().orElse(SMOOTH),
        HAZEN_WILLIAMS_C,
        Optional.empty(),
        new Pipe.Sold(Pipe.Sold.Form.CUT, FOOT),
        new TypedRating(own.ratingWater(), own.ratingOil()),
        Source.lease("the lease's own pipe"));
  }

  /** Guessed from the name, and only used to choose fittings: a rating is never guessed. */
  private static Material material(String name) {
    String words = " " + name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", " ") + " ";
    if (words.matches(".* (poly|hdpe|pe|sdr|pe\\d+|polyethylene) .*")) {
      return Material.POLYETHYLENE;
    }
    if (words.matches(".* (steel|sch|iron) .*")) {
      return Material.STEEL;
    }
    if (words.contains(" pvc ")) {
      return Material.PVC;
    }
    return words.matches(".* (fibreglass|fiberglass|frp) .*")
        ? Material.FIBREGLASS
        : Material.OTHER;
  }
}
