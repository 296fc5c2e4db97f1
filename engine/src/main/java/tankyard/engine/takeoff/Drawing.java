package tankyard.engine.takeoff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.Material;
import tankyard.engine.catalog.NominalSize;
import tankyard.engine.catalog.Pipe;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Thing;
import tankyard.engine.units.Length;

/** What the rules look at: the lease, what its lines are laid with, and what the store has. */
final class Drawing {
  private static final double METRES_PER_FOOT = Length.ofFeet(1).metres();

  /** Legs, overflows and suctions shorter than this lie on the pad, above the ground. */
  private static final double ON_THE_PAD_FT = 100;

  private final Lease lease;
  private final Catalog catalog;
  private final GroundLengths lengths;
  private final Stock stock;
  private final List<Line> lines;
  private final Map<String, Thing> stayingById = new HashMap<>();
  private final Map<String, List<Line>> linesById = new HashMap<>();

  Drawing(Lease lease, Catalog catalog, GroundLengths lengths) {
    this.lease = lease;
    this.catalog = catalog;
    this.lengths = lengths;
    stock = new Stock(catalog);
    lines = lease.lines().stream().filter(l -> l.status().stays()).toList();
    lease.things().filter(t -> t.status().stays()).forEach(t -> stayingById.put(t.id(), t));
    for (Line line : lines) {
      at(line.from()).add(line);
      if (!line.to().equals(line.from())) {
        at(line.to()).add(line);
      }
    }
  }

  private List<Line> at(String thingId) {
    return linesById.computeIfAbsent(thingId, id -> new ArrayList<>());
  }

  Lease lease() {
    return lease;
  }

  Catalog catalog() {
    return catalog;
  }

  Stock stock() {
    return stock;
  }

  /** Lines that are part of the battery once the work is done. */
  List<Line> lines() {
    return lines;
  }

  /** Things that are part of the battery once the work is done. */
  <T extends Thing> List<T> staying(List<T> things) {
    return things.stream().filter(t -> t.status().stays()).toList();
  }

  Stream<Line> linesAt(Thing thing) {
    return linesById.getOrDefault(thing.id(), List.of()).stream();
  }

  /** The two ends of a line, as far as they stay. */
  Stream<Thing> ends(Line line) {
    return Stream.of(line.from(), line.to()).map(stayingById::get).filter(Objects::nonNull);
  }

  double feet(Line line) {
    return lengths.metres(line) / METRES_PER_FOOT;
  }

  /** Flow and injection lines are buried; the others where they leave the pad. */
  boolean isBuried(Line line) {
    return line.service() == Service.FLOW_LINE
        || line.service() == Service.INJECTION
        || line.service() == Service.WATER_RETURN
        || feet(line) > ON_THE_PAD_FT;
  }

  Optional<Pipe> pipe(Line line) {
    return catalog.pipe(line.pipe());
  }

  /** Its nominal size; 2 in, the usual, where the pipe is not known. */
  NominalSize size(Line line) {
    return pipe(line).map(Pipe::nominal).orElse(NominalSize.ofInches(2));
  }

  Material material(Line line) {
    return pipe(line).map(Pipe::material).orElse(Material.OTHER);
  }

  /** The joint between a new and an old part is new. */
  static Status joint(Line line, Thing thing) {
    return joint(line.status(), thing.status());
  }

  static Status joint(Status one, Status other) {
    return one == Status.NEW || other == Status.NEW ? Status.NEW : Status.HAVE;
  }
}
