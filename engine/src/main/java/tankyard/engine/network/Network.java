package tankyard.engine.network;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.Multigraph;

/** Joints and the runs between them, as a graph. */
public final class Network {
  private final Map<String, Joint> joints = new LinkedHashMap<>();
  private final List<Run> runs;
  private final Map<String, Run> runById = new LinkedHashMap<>();

  /** Runs stand in it by id: a run's law can be large, and the graph hashes its edges. */
  private final Graph<String, String> graph = new Multigraph<>(null, null, false);

  public Network(List<Joint> joints, List<Run> runs) {
    for (Joint joint : joints) {
      if (this.joints.put(joint.id(), joint) != null) {
        throw new IllegalArgumentException("Two joints are called " + joint.id());
      }
      graph.addVertex(joint.id());
    }
    for (Run run : runs) {
      if (runById.put(run.id(), run) != null) {
        throw new IllegalArgumentException("Two runs are called " + run.id());
      }
      graph.addEdge(run.from(), run.to(), run.id());
    }
    this.runs = List.copyOf(runs);
  }

  public Joint joint(String id) {
    return joints.get(id);
  }

  public List<Joint> joints() {
    return List.copyOf(joints.values());
  }

  public List<Run> runs() {
    return runs;
  }

  /** The runs that meet at a joint. */
  List<Run> at(String joint) {
    return graph.edgesOf(joint).stream().map(runById::get).toList();
  }

  /** Joints with no way to one whose pressure is held: nothing can be said about them. */
  public List<String> cutOff() {
    Set<String> reached =
        new ConnectivityInspector<>(graph)
            .connectedSets().stream()
                .filter(set -> set.stream().anyMatch(id -> joints.get(id).isHeld()))
                .flatMap(Set::stream)
                .collect(Collectors.toSet());
    return joints.keySet().stream().filter(id -> !reached.contains(id)).toList();
  }

  /** The same network without the joints that have no way to a held one. */
  public Network reachable() {
    Set<String> lost = Set.copyOf(cutOff());
    if (lost.isEmpty()) {
      return this;
    }
    return new Network(
        joints.values().stream().filter(j -> !lost.contains(j.id())).toList(),
        runs.stream().filter(r -> !lost.contains(r.from()) && !lost.contains(r.to())).toList());
  }
}
