package tankyard.engine.study;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.Service;
import tankyard.engine.network.Joint;
import tankyard.engine.network.Network;
import tankyard.engine.network.NetworkSolver;
import tankyard.engine.network.Run;
import tankyard.engine.network.Solved;
import tankyard.engine.wells.InjectionLaw;

/**
 * The injection side as a network: pumps push their rate in, wells take it at the pressure their
 * law asks for, lines and tees lie between. Two wells on one pump share its rate so that both paths
 * ask for the same pressure at the pump; all pumps run at once. A well that would give water back
 * instead of taking it is shut by its check valve: then the others take all.
 */
final class InjectionNet {
  private static final String GROUND = "(into the ground)";
  private static final String WORDS = "rate while the pump runs";

  private final CaseStudy study;
  private final Map<String, InjectionPump> pumps = new LinkedHashMap<>();
  private final Map<String, InjectionWell> wells = new LinkedHashMap<>();
  private final Map<String, LaidLine> lines = new LinkedHashMap<>();
  private final Set<String> joints = new LinkedHashSet<>();
  private final Map<String, Double> intoWell = new HashMap<>();
  private final Map<String, LineRun> runs = new LinkedHashMap<>();
  private Optional<Solved.Audit> audit = Optional.empty();

  private InjectionNet(CaseStudy study) {
    this.study = study;
    for (LaidLine line : study.survey().laid().values()) {
      if (line.line().service() == Service.INJECTION) {
        lines.put(line.id(), line);
        joints.add(line.line().from());
        joints.add(line.line().to());
      }
    }
    study.lease().injectionPumps().stream()
        .filter(p -> joints.contains(p.id()) && p.rate().cubicMetresPerSecond() > 0)
        .forEach(p -> pumps.put(p.id(), p));
    study.lease().injectionWells().stream()
        .filter(w -> joints.contains(w.id()))
        .forEach(w -> wells.put(w.id(), w));
  }

  static InjectionNet of(CaseStudy study) {
    InjectionNet net = new InjectionNet(study);
    net.solve();
    return net;
  }

  static InjectionLaw law(InjectionWell well) {
    return new InjectionLaw(well.pressureAtNoFlow(), well.resistance());
  }

  private void solve() {
    Set<String> open = new LinkedHashSet<>(wells.keySet());
    while (!pumps.isEmpty() && !open.isEmpty()) {
      Network network = network(open).reachable();
      Solved solved = NetworkSolver.solve(network);
      Optional<String> giving =
          open.stream()
              .filter(w -> network.runs().stream().anyMatch(r -> r.id().equals(w)))
              .filter(w -> solved.flow(w) < 0)
              .min(Comparator.comparingDouble(solved::flow));
      if (giving.isEmpty()) {
        keep(network, solved);
        return;
      }
      open.remove(giving.get());
    }
  }

  private Network network(Set<String> open) {
    List<Joint> all = new ArrayList<>();
    all.add(Joint.held(GROUND, 0));
    for (String id : joints) {
      InjectionPump pump = pumps.get(id);
      all.add(Joint.free(id, pump == null ? 0 : pump.rate().cubicMetresPerSecond()));
    }
    List<Run> links = new ArrayList<>();
    for (LaidLine line : lines.values()) {
      LineLink link = new LineLink(LineFill.even(line, study.brine()).at(0), 1);
      links.add(new Run(line.id(), line.line().from(), line.line().to(), link));
    }
    open.forEach(w -> links.add(new Run(w, w, GROUND, new WellLink(law(wells.get(w))))));
    return Network.of(all, links);
  }

  private void keep(Network network, Solved solved) {
    audit = Optional.of(solved.audit());
    for (Run run : network.runs()) {
      double flow = solved.flow(run.id());
      LaidLine line = lines.get(run.id());
      if (line == null) {
        intoWell.put(run.id(), flow);
      } else if (flow != 0) {
        double down = solved.pressurePa(flow >= 0 ? run.to() : run.from());
        runs.put(run.id(), LineRun.of(line, flow, WORDS, study.brine(), down));
      }
    }
  }

  /** Of the solve; empty where nothing is pumped. */
  Optional<Solved.Audit> audit() {
    return audit;
  }

  /** Every injection line that carries something. */
  Collection<LineRun> runs() {
    return runs.values();
  }

  /** A pump and a well its water reaches. */
  List<Way> ways() {
    List<Way> found = new ArrayList<>();
    pumps.values().forEach(pump -> walk(pump, pump.id(), List.of(), found));
    return found;
  }

  private void walk(InjectionPump pump, String here, List<LineRun> sofar, List<Way> found) {
    InjectionWell well = wells.get(here);
    boolean known = found.stream().anyMatch(w -> w.pump() == pump && w.well() == well);
    if (well != null && intoWell.getOrDefault(here, 0.0) > 0 && !known) {
      found.add(new Way(pump, well, sofar, intoWell.get(here), share(pump)));
    }
    for (LineRun run : runs.values()) {
      boolean forward = run.flow() >= 0;
      String from = forward ? run.laid().line().from() : run.laid().line().to();
      if (from.equals(here)) {
        List<LineRun> way = new ArrayList<>(sofar);
        way.add(run);
        walk(pump, forward ? run.laid().line().to() : run.laid().line().from(), way, found);
      }
    }
  }

  /** A pump's part of what all pumps push that hang together with it. */
  private double share(InjectionPump pump) {
    Set<String> part = new LinkedHashSet<>(List.of(pump.id()));
    boolean grew = true;
    while (grew) {
      grew = false;
      for (LineRun run : runs.values()) {
        String from = run.laid().line().from();
        String to = run.laid().line().to();
        grew |= part.contains(from) && part.add(to) || part.contains(to) && part.add(from);
      }
    }
    double all =
        pumps.values().stream()
            .filter(p -> part.contains(p.id()))
            .mapToDouble(p -> p.rate().cubicMetresPerSecond())
            .sum();
    return pump.rate().cubicMetresPerSecond() / all;
  }

  /**
   * How a pump's water reaches a well.
   *
   * @param intoWell all that goes into the well, from every pump, m3/s
   * @param share of it that is this pump's
   */
  record Way(
      InjectionPump pump, InjectionWell well, List<LineRun> runs, double intoWell, double share) {}
}
