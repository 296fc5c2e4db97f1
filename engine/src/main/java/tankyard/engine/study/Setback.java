package tankyard.engine.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.engine.lease.Landmark;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Thing;
import tankyard.engine.terrain.Outline;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * How far a tank or vessel stands from a landmark, from its shell to the nearest side of the
 * landmark. How far it must stand is for the local rule to say, which is typed or not checked.
 *
 * @param to the tank or vessel
 * @param clear nothing where it stands in the landmark
 * @param needed by the local rule, as it was typed
 */
public record Setback(
    String landmarkId, String to, Computed<Length> clear, Optional<Length> needed) {
  private static final Source SOURCE =
      Source.definition("straight on the map to the nearest side, less half of what stands there");

  /** The nearest, of every landmark that stays, on a lease that has a tank or a vessel. */
  public static List<Setback> of(Lease lease) {
    return staying(lease)
        .flatMap(
            landmark ->
                from(lease, landmark)
                    .min(Comparator.comparingDouble(s -> s.clear().value().metres()))
                    .stream())
        .toList();
  }

  /** Every tank or vessel that stands nearer to a landmark than the rule that was typed lets it. */
  public static List<Setback> tooNear(Lease lease) {
    return staying(lease)
        .filter(landmark -> landmark.setback().isPresent())
        .flatMap(landmark -> from(lease, landmark))
        .filter(Setback::isShort)
        .toList();
  }

  private static Stream<Landmark> staying(Lease lease) {
    return lease.landmarks().stream().filter(landmark -> landmark.status().stays());
  }

  private static Stream<Setback> from(Lease lease, Landmark landmark) {
    Outline outline = Outlines.of(landmark);
    return Stream.<Thing>concat(lease.tanks().stream(), lease.vessels())
        .filter(thing -> thing.status().stays())
        .map(
            thing ->
                new Setback(landmark.id(), thing.id(), clear(outline, thing), landmark.setback()));
  }

  private boolean isShort() {
    return needed.filter(least -> clear.value().metres() < least.metres()).isPresent();
  }

  private static Computed<Length> clear(Outline outline, Thing thing) {
    double apartM = outline.metresTo(thing.at().east().metres(), thing.at().north().metres());
    double halfM = Clearance.radiusM(thing);
    return Computed.of(
        LaidLine.feet(Math.max(0, apartM - halfM)),
        () ->
            Working.of(
                "Distance from shell to landmark",
                "d",
                "max(D-a,0)",
                Unit.FOOT,
                SOURCE,
                Term.of(
                    "D", "from its middle to the nearest side", LaidLine.feet(apartM), Unit.FOOT),
                Term.of("a", "half of " + thing.name(), LaidLine.feet(halfM), Unit.FOOT)));
  }
}
