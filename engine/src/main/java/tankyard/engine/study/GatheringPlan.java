package tankyard.engine.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.BiconnectivityInspector;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.AsSubgraph;
import org.jgrapht.graph.Multigraph;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Tee;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Well;

/**
 * Which flow lines bring which wells to a separator, before any rate is known: what is cut off, and
 * which lines one well has to itself.
 */
final class GatheringPlan {
  private final Map<String, LaidLine> lines = new LinkedHashMap<>();
  private final Set<String> joints = new LinkedHashSet<>();
  private final Map<String, String> onlyWell = new HashMap<>();
  private final List<Thing> cutOff = new ArrayList<>();
  private final Lease lease;

  GatheringPlan(Lease lease, Map<String, LaidLine> laid) {
    this.lease = lease;
    Graph<String, String> graph = graph(laid);
    List<Set<String>> parts = new ConnectivityInspector<>(graph).connectedSets();
    for (Set<String> part : parts) {
      if (part.stream().anyMatch(this::isSeparator)) {
        joints.addAll(part);
      }
    }
    laid.values().stream()
        .filter(l -> l.line().service() == Service.FLOW_LINE && joints.contains(l.line().from()))
        .forEach(l -> lines.put(l.id(), l));
    lease
        .things()
        .filter(t -> (t instanceof Well || t instanceof Tee) && t.status().stays())
        .filter(t -> !joints.contains(t.id()))
        .filter(t -> t instanceof Well || gathersOrStandsAlone(t, laid))
        .forEach(cutOff::add);
    findOwnLines(graph);
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

  private Graph<String, String> graph(Map<String, LaidLine> laid) {
    Graph<String, String> graph = new Multigraph<>(null, null, false);
    lease
        .things()
        .filter(t -> t.status().stays())
        .filter(t -> t instanceof Well || t instanceof Tee || t instanceof Separator)
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

  /** A line whose loss would cut off one well and nothing else carries that well alone. */
  private void findOwnLines(Graph<String, String> graph) {
    for (String bridge : new BiconnectivityInspector<>(graph).getBridges()) {
      if (!lines.containsKey(bridge)) {
        continue;
      }
      Set<String> rest = new LinkedHashSet<>(graph.edgeSet());
      rest.remove(bridge);
      ConnectivityInspector<String, String> without =
          new ConnectivityInspector<>(new AsSubgraph<>(graph, graph.vertexSet(), rest));
      String from = graph.getEdgeSource(bridge);
      Set<String> side = without.connectedSetOf(from);
      if (side.stream().anyMatch(this::isSeparator)) {
        side = without.connectedSetOf(graph.getEdgeTarget(bridge));
      }
      List<String> wells = side.stream().filter(this::isWell).toList();
      if (wells.size() == 1 && side.stream().noneMatch(this::isSeparator)) {
        onlyWell.put(bridge, wells.get(0));
      }
    }
  }

  /** Lines that lead to a separator, by id. */
  Map<String, LaidLine> lines() {
    return lines;
  }

  /** Ids of wells, tees and separators that hang together with a separator. */
  Set<String> joints() {
    return joints;
  }

  /** Wells and tees with no way to a separator. */
  List<Thing> cutOff() {
    return cutOff;
  }

  /** The one well a line carries; null where it carries several. */
  String onlyWell(String lineId) {
    return onlyWell.get(lineId);
  }

  boolean isSeparator(String id) {
    return lease.separators().stream().anyMatch(s -> s.id().equals(id));
  }

  private boolean isWell(String id) {
    return lease.wells().stream().anyMatch(w -> w.id().equals(id));
  }
}
