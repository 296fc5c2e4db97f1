package tankyard.engine.checks.lines;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.interfaces.ShortestPathAlgorithm.SingleSourcePaths;
import org.jgrapht.alg.shortestpath.BFSShortestPath;
import org.jgrapht.graph.Multigraph;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Several;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Vessel;
import tankyard.engine.lease.Well;
import tankyard.engine.study.LaidLine;
import tankyard.engine.study.Survey;
import tankyard.engine.working.Source;

/** Wells that share a line can't be tested one by one. */
public final class CommingledCheck implements Check {
  private static final Source SOURCE =
      Source.published(
          "L. V. Langston, The Lease Pumper's Handbook, Oklahoma 2003, 10B: a line for each well");

  @Override
  public String id() {
    return "commingled";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Map<String, Set<String>> wellsOn = wellsOnLines(evidence.survey());
    Set<String> sharing = new LinkedHashSet<>();
    wellsOn.values().stream().filter(wells -> wells.size() > 1).forEach(sharing::addAll);
    if (sharing.isEmpty()) {
      return List.of();
    }
    List<String> lines =
        wellsOn.entrySet().stream()
            .filter(e -> e.getValue().size() > 1)
            .map(e -> evidence.nameOf(e.getKey()))
            .toList();
    return List.of(
        Finding.of(
                id(),
                Severity.NOTE,
                "",
                Several.named(sharing.stream().map(evidence::nameOf).toList())
                    + " share "
                    + Several.named(lines)
                    + ": they can't be tested one by one while the others run.",
                SOURCE)
            .mendedBy(
                "A valve at each tee, and a connection for a test trailer or a test line.",
                "Or shut the neighbours in for the hours of a test."));
  }

  /** Ids of the wells whose way to a separator takes each line. */
  private static Map<String, Set<String>> wellsOnLines(Survey survey) {
    Graph<String, String> graph = new Multigraph<>(String.class);
    for (LaidLine laid : survey.laid().values()) {
      Line line = laid.line();
      if (line.service() == Service.FLOW_LINE && !line.from().equals(line.to())) {
        graph.addVertex(line.from());
        graph.addVertex(line.to());
        graph.addEdge(line.from(), line.to(), line.id());
      }
    }
    Map<String, Set<String>> wellsOn = new LinkedHashMap<>();
    Map<String, SingleSourcePaths<String, String>> waysTo = waysTo(graph, survey);
    for (Well well : survey.lease().wells()) {
      way(graph, well.id(), waysTo)
          .ifPresent(
              path ->
                  path.getEdgeList()
                      .forEach(
                          line ->
                              wellsOn
                                  .computeIfAbsent(line, l -> new LinkedHashSet<>())
                                  .add(well.id())));
    }
    return wellsOn;
  }

  /** The shortest ways from each vessel, walked once for all wells. */
  private static Map<String, SingleSourcePaths<String, String>> waysTo(
      Graph<String, String> graph, Survey survey) {
    BFSShortestPath<String, String> shortest = new BFSShortestPath<>(graph);
    Map<String, SingleSourcePaths<String, String>> ways = new LinkedHashMap<>();
    survey.vessels().stream()
        .map(Vessel::id)
        .filter(graph::containsVertex)
        .forEach(vessel -> ways.put(vessel, shortest.getPaths(vessel)));
    return ways;
  }

  private static Optional<GraphPath<String, String>> way(
      Graph<String, String> graph,
      String well,
      Map<String, SingleSourcePaths<String, String>> waysTo) {
    return graph.containsVertex(well)
        ? waysTo.values().stream()
            .flatMap(paths -> Optional.ofNullable(paths.getPath(well)).stream())
            .findFirst()
        : Optional.empty();
  }
}
