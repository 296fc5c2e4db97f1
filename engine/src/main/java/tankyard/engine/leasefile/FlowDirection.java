package tankyard.engine.leasefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.KosarajuStrongConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedMultigraph;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Tee;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Vessel;
import tankyard.engine.lease.Well;

/**
 * Finds lines that run the wrong way: from a tank back to the separator, or round and round. A loop
 * of flow lines is no fault: the fluid finds its way through either side. A water return runs back
 * by its nature.
 */
final class FlowDirection {
  private FlowDirection() {}

  /** For a lease in which every line has its two ends. */
  static List<Complaint> complaints(Lease lease) {
    List<Complaint> found = new ArrayList<>();
    for (int i = 0; i < lease.lines().size(); i++) {
      backwards(lease, lease.lines().get(i), "/lines/" + i, found);
    }
    if (found.isEmpty()) {
      round(lease, found);
    }
    return found;
  }

  private static void backwards(Lease lease, Line line, String place, List<Complaint> found) {
    Thing from = lease.thing(line.from()).orElseThrow();
    Thing to = lease.thing(line.to()).orElseThrow();
    boolean returns = line.service() == Service.WATER_RETURN && to instanceof Well;
    if (returns || from instanceof Tee || to instanceof Tee || step(from) <= step(to)) {
      return;
    }
    found.add(
        new Complaint(
            place + "/to",
            named(line) + " from the " + named(from) + " back to the " + named(to),
            "a line the way the fluid goes: wells, separators or gun barrels, tanks, pumps, injection wells"));
  }

  /** How far along its way the fluid is. Tees may stand anywhere. */
  private static int step(Thing thing) {
    if (thing instanceof Well) {
      return 0;
    }
    if (thing instanceof Vessel) {
      return 1;
    }
    if (thing instanceof Tank) {
      return 2;
    }
    return thing instanceof InjectionPump ? 3 : 4;
  }

  private static String named(Line line) {
    return line.kind() + " \"" + line.id() + "\"";
  }

  private static String named(Thing thing) {
    return thing.kind() + " \"" + thing.id() + "\"";
  }

  private static void round(Lease lease, List<Complaint> found) {
    Graph<String, DefaultEdge> graph = new DirectedMultigraph<>(DefaultEdge.class);
    lease.things().forEach(t -> graph.addVertex(t.id()));
    lease.lines().stream()
        .filter(l -> l.service() != Service.WATER_RETURN)
        .forEach(l -> graph.addEdge(l.from(), l.to()));
    List<Set<String>> rounds =
        new KosarajuStrongConnectivityInspector<>(graph).stronglyConnectedSets();
    for (int i = 0; i < lease.lines().size(); i++) {
      Line line = lease.lines().get(i);
      for (Set<String> things : rounds) {
        boolean inside = things.contains(line.from()) && things.contains(line.to());
        if (inside && line.service() != Service.FLOW_LINE) {
          found.add(
              new Complaint(
                  "/lines/" + i,
                  named(line) + " in a ring through " + String.join(", ", new TreeSet<>(things)),
                  "a line that does not lead back to where its fluid came from"));
        }
      }
    }
  }
}
