package tankyard.engine.lease;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The whole document: an immutable tree. An edit gives a new lease that shares what did not change.
 *
 * <p>A lease may be half drawn: a line may still use a pipe that no catalogue has, a separator may
 * have no water leg. Such gaps are findings, not errors. What can't stand is checked by {@code
 * LeaseRules}: two things with one id, a line that ends at nothing.
 */
public record Lease(
    String name,
    String note,
    Site site,
    List<SpotHeight> spotHeights,
    Fluids fluids,
    List<Well> wells,
    List<Tee> tees,
    List<Separator> separators,
    List<Tank> tanks,
    List<InjectionPump> injectionPumps,
    List<InjectionWell> injectionWells,
    List<Line> lines,
    List<DesignCase> cases,
    Practice practice,
    Prices prices,
    List<OwnPipe> ownPipes,
    Unknowns unknowns) {

  public Lease {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(site, "site");
    Objects.requireNonNull(fluids, "fluids");
    spotHeights = List.copyOf(spotHeights);
    wells = List.copyOf(wells);
    tees = List.copyOf(tees);
    separators = List.copyOf(separators);
    tanks = List.copyOf(tanks);
    injectionPumps = List.copyOf(injectionPumps);
    injectionWells = List.copyOf(injectionWells);
    lines = List.copyOf(lines);
    cases = List.copyOf(cases);
    ownPipes = List.copyOf(ownPipes);
  }

  /** Every thing on the map, kind by kind, each kind in its own order. */
  public Stream<Thing> things() {
    return Stream.of(wells, tees, separators, tanks, injectionPumps, injectionWells)
        .flatMap(List::stream);
  }

  public Optional<Thing> thing(String id) {
    return things().filter(t -> t.id().equals(id)).findFirst();
  }

  public Optional<Line> line(String id) {
    return lines.stream().filter(l -> l.id().equals(id)).findFirst();
  }

  public Stream<Line> linesOf(String thingId) {
    return lines.stream().filter(l -> l.touches(thingId));
  }

  /** Adds a thing, or puts it in the place of the one with its id. */
  public Lease with(Thing thing) {
    LeaseParts parts = new LeaseParts(this);
    parts.put(thing);
    return parts.toLease();
  }

  /** Adds a line, or puts it in the place of the one with its id. */
  public Lease with(Line line) {
    LeaseParts parts = new LeaseParts(this);
    parts.lines = LeaseParts.put(lines, line, Line::id);
    return parts.toLease();
  }

  /** Takes out a thing with the lines that touch it, or a line. */
  public Lease without(String id) {
    LeaseParts parts = new LeaseParts(this);
    parts.remove(id);
    return parts.toLease();
  }

  public Lease withName(String newName) {
    return edit(p -> p.name = newName);
  }

  public Lease withSite(Site newSite) {
    return edit(p -> p.site = newSite);
  }

  public Lease withFluids(Fluids newFluids) {
    return edit(p -> p.fluids = newFluids);
  }

  public Lease withSpotHeights(List<SpotHeight> heights) {
    return edit(p -> p.spotHeights = heights);
  }

  public Lease withCases(List<DesignCase> newCases) {
    return edit(p -> p.cases = newCases);
  }

  public Lease withPractice(Practice newPractice) {
    return edit(p -> p.practice = newPractice);
  }

  public Lease withPrices(Prices newPrices) {
    return edit(p -> p.prices = newPrices);
  }

  public Lease withUnknowns(Unknowns newUnknowns) {
    return edit(p -> p.unknowns = newUnknowns);
  }

  /** The same lease with every well changed alike. */
  public Lease withEachWell(UnaryOperator<Well> change) {
    return edit(p -> p.wells = new ArrayList<>(wells.stream().map(change).toList()));
  }

  private Lease edit(java.util.function.Consumer<LeaseParts> change) {
    LeaseParts parts = new LeaseParts(this);
    change.accept(parts);
    return parts.toLease();
  }
}
