package tankyard.engine.study;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.BiconnectivityInspector;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.Multigraph;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Tee;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Vessel;
import tankyard.engine.lease.Well;
import tankyard.engine.network.Layout;

/**
 * Which flow lines bring which wells to a separator or gun barrel, before any rate is known: what
 * is cut off, and which lines one well has to itself.
 */
final class GatheringPlan {
  /** Stands for every vessel where only the ways to any of them count. */
  private static final String ANY_VESSEL = "";

  private final List<LaidLine> lines;
  private final Layout layout;
  private final List<String> wellIds;
  private final List<Thing> cutOff;

  /** Lines without which some well has no way to any vessel. */
  private final Set<String> bridges;

  GatheringPlan(Lease lease, Map<String, LaidLine> laid) {
    Set<String> vessels = lease.vessels().map(Vessel::id).collect(Collectors.toSet());
    Graph<String, String> graph = graph(lease, laid);
    Set<String> joints = new LinkedHashSet<>();
    for (Set<String> part : new ConnectivityInspector<>(graph).connectedSets()) {
      if (part.stream().anyMatch(vessels::contains)) {
        joints.addAll(part);
      }
    }
    lines =
        laid.values().stream()
            .filter(l -> l.line().service() == Service.FLOW_LINE)
            .filter(l -> joints.contains(l.line().from()))
            .toList();
    wellIds = lease.wells().stream().map(Well::id).filter(joints::contains).toList();
    cutOff =
        lease
            .things()
            .filter(t -> (t instanceof Well || t instanceof Tee) && t.status().stays())
            .filter(t -> !joints.contains(t.id()))
            .filter(t -> t instanceof Well || gathersOrStandsAlone(t, laid))
            .toList();
    layout = layout(List.copyOf(joints), vessels);
    bridges =
        layout.isTree() ? lineIds() : new BiconnectivityInspector<>(toAnyVessel()).getBridges();
  }

  /** A tee on a leg or on a water return gathers nothing. */
  private static boolean gathersOrStandsAlone(Thing tee, Map<String, LaidLine> laid) {
    List<Service> services =
        laid.values().stream()
            .map(LaidLine::line)
            .filter(l -> l.touches(tee.id()))
            .map(Line::service)
            .toList();
    return services.isEmpty() || services.contains(Service.FLOW_LINE);
  }

  private static Graph<String, String> graph(Lease lease, Map<String, LaidLine> laid) {
    Graph<String, String> graph = new Multigraph<>(null, null, false);
    lease
        .things()
        .filter(t -> t.status().stays())
        .filter(t -> t instanceof Well || t instanceof Tee || t instanceof Vessel)
        .forEach(t -> graph.addVertex(t.id()));
    for (LaidLine line : laid.values()) {
      boolean gathers =
          line.line().service() == Service.FLOW_LINE
              && graph.containsVertex(line.line().from())
              && graph.containsVertex(line.line().to());
      if (gathers) {
        graph.addEdge(line.line().from(), line.line().to(), line.id());
      }
    }
    return graph;
  }

  private Layout layout(List<String> joints, Set<String> vessels) {
    boolean[] held = new boolean[joints.size()];
    for (int j = 0; j < held.length; j++) {
      held[j] = vessels.contains(joints.get(j));
    }
    return new Layout(
        joints,
        held,
        lines.stream().map(l -> new Layout.Ends(l.id(), l.line().from(), l.line().to())).toList());
  }

  private Set<String> lineIds() {
    return lines.stream().map(LaidLine::id).collect(Collectors.toSet());
  }

  /** The lines with all vessels taken as one joint. */
  private Graph<String, String> toAnyVessel() {
    Graph<String, String> graph = new Multigraph<>(null, null, false);
    graph.addVertex(ANY_VESSEL);
    layout.joints().forEach(id -> graph.addVertex(orVessel(id)));
    for (LaidLine line : lines) {
      String from = orVessel(line.line().from());
      String to = orVessel(line.line().to());
      if (!from.equals(to)) {
        graph.addEdge(from, to, line.id());
      }
    }
    return graph;
  }

  private String orVessel(String id) {
    return layout.isHeld(layout.joint(id)) ? ANY_VESSEL : id;
  }

  /** Lines that lead to a vessel, in drawn order: the runs of the layout. */
  List<LaidLine> lines() {
    return lines;
  }

  /** How wells, tees and vessels hang together; the vessels are held. */
  Layout layout() {
    return layout;
  }

  /** Wells that hang together with a vessel. */
  List<String> wellIds() {
    return wellIds;
  }

  /** Wells and tees with no way to a vessel. */
  List<Thing> cutOff() {
    return cutOff;
  }

  /**
   * Whether a line carries what the wells beyond it make, whatever the pressures: not so where it
   * is part of a loop or lies between two vessels.
   */
  boolean flowIsGiven(int line) {
    return bridges.contains(lines.get(line).id());
  }

  /**
   * The one well whose liquid can pass a line, by the line; a line that several share is not in it.
   * Wells that make nothing share nothing; behind them alone a line is theirs.
   *
   * @param making wells that make something
   */
  Map<String, String> onlyWells(Set<String> making) {
    Map<String, String> found = new HashMap<>(ownLines(Set.copyOf(wellIds)));
    found.putAll(ownLines(making));
    return found;
  }

  private Map<String, String> ownLines(Set<String> wells) {
    OwnLines own =
        layout.isTree()
            ? OwnLines.ofTree(layout, wells)
            : OwnLines.of(layout, toAnyVessel(), wells);
    return own.byLine();
  }
}
