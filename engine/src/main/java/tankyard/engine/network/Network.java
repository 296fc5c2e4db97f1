package tankyard.engine.network;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A layout with what comes in at its joints, the pressures that are held, and a law for each run.
 */
public final class Network {
  private final Layout layout;
  private final Circuit circuit;
  private final List<Run> shut;

  /**
   * A network.
   *
   * @param inflow m3/s from outside into each joint; negative where it is drawn off
   * @param heldPa gauge pressure of each joint that is held; not read elsewhere
   * @param links one for each run
   */
  public Network(Layout layout, double[] inflow, double[] heldPa, List<? extends Link> links) {
    this(layout, inflow, heldPa, links, List.of());
  }

  private Network(
      Layout layout, double[] inflow, double[] heldPa, List<? extends Link> links, List<Run> shut) {
    this.layout = layout;
    this.shut = shut;
    circuit =
        new Circuit(layout.topology(), inflow.clone(), heldPa.clone(), links.toArray(Link[]::new));
  }

  /** A network; runs that are {@link Shut} carry nothing and are left out. */
  public static Network of(List<Joint> joints, List<Run> runs) {
    List<Run> open = runs.stream().filter(r -> r.link() != Shut.VALVE).toList();
    return new Network(
        layout(joints, open),
        joints.stream().mapToDouble(Joint::inflow).toArray(),
        joints.stream().mapToDouble(j -> j.heldPa().orElse(Double.NaN)).toArray(),
        open.stream().map(Run::link).toList(),
        runs.stream().filter(r -> r.link() == Shut.VALVE).toList());
  }

  private static Layout layout(List<Joint> joints, List<Run> runs) {
    boolean[] held = new boolean[joints.size()];
    for (int j = 0; j < held.length; j++) {
      held[j] = joints.get(j).isHeld();
    }
    return new Layout(
        joints.stream().map(Joint::id).toList(),
        held,
        runs.stream().map(r -> new Layout.Ends(r.id(), r.from(), r.to())).toList());
  }

  public Layout layout() {
    return layout;
  }

  /** Its numbers, for the solver, which does not write into them. */
  Circuit circuit() {
    return circuit;
  }

  double inflow(int joint) {
    return circuit.inflow()[joint];
  }

  Link link(int run) {
    return circuit.link()[run];
  }

  public List<Joint> joints() {
    List<Joint> joints = new ArrayList<>();
    for (int j = 0; j < layout.joints().size(); j++) {
      String id = layout.joints().get(j);
      joints.add(
          layout.isHeld(j) ? Joint.held(id, circuit.heldPa()[j]) : Joint.free(id, inflow(j)));
    }
    return joints;
  }

  public List<Run> runs() {
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < layout.runs().size(); i++) {
      Layout.Ends ends = layout.runs().get(i);
      runs.add(new Run(ends.run(), ends.from(), ends.to(), link(i)));
    }
    return runs;
  }

  /** Joints with no way to one whose pressure is held: nothing can be said about them. */
  public List<String> cutOff() {
    return layout.cutOff();
  }

  /** Why it can't be solved, by name; empty where nothing is in the way. */
  public Optional<String> whyUnsolvable() {
    if (!layout.joints().isEmpty() && !layout.hasHeld()) {
      return Optional.of("No outlet: no joint's pressure is held");
    }
    List<String> lost = cutOff();
    if (lost.isEmpty()) {
      return Optional.empty();
    }
    List<String> shutOff =
        shut.stream()
            .filter(r -> lost.contains(r.from()) || lost.contains(r.to()))
            .map(Run::id)
            .toList();
    return Optional.of(
        "No way to a held pressure from "
            + String.join(", ", lost)
            + (shutOff.isEmpty() ? "" : ": shut are " + String.join(", ", shutOff)));
  }

  /** The same network without the joints that have no way to a held one. */
  public Network reachable() {
    Set<String> lost = new HashSet<>(cutOff());
    return lost.isEmpty()
        ? this
        : of(
            joints().stream().filter(j -> !lost.contains(j.id())).toList(),
            runs().stream()
                .filter(r -> !lost.contains(r.from()) && !lost.contains(r.to()))
                .toList());
  }
}
