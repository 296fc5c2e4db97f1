package tankyard.engine.cures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.NextSize;
import tankyard.engine.catalog.Pipe;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Status;
import tankyard.engine.study.LegRun;
import tankyard.engine.study.LineRun;
import tankyard.engine.window.PressureLimit;

/** Bigger pipe: for the water leg that sets the least, for the flow line that sets the most. */
final class LegCures {
  private static final int SIZES = 2;

  /** A line that loses less is not worth a bigger one, Pa. */
  private static final double WORTH_PA = 350;

  private LegCures() {}

  static List<Cure> of(CureSite site) {
    List<Cure> found = new ArrayList<>();
    site.leg().ifPresent(leg -> found.addAll(bigger(site, "bigger-leg", lines(leg))));
    site.window()
        .most()
        .filter(most -> !site.window().open())
        .filter(
            most ->
                most.kind() == PressureLimit.Kind.PIPE_RATING
                    || most.kind() == PressureLimit.Kind.STUFFING_BOX)
        .flatMap(most -> thirstiest(site, most))
        .ifPresent(line -> found.addAll(bigger(site, "bigger-flow-line", List.of(line))));
    return found;
  }

  private static List<Line> lines(LegRun leg) {
    return leg.runs().stream().map(r -> r.laid().line()).toList();
  }

  /** Of all flow lines the one that loses most in the case that sets the most. */
  private static Optional<Line> thirstiest(CureSite site, PressureLimit most) {
    return site.study(most.caseId()).unloaded().runs().stream()
        .filter(r -> r.march().frictionPascals() > WORTH_PA)
        .reduce((a, b) -> loss(b) > loss(a) ? b : a)
        .map(r -> r.laid().line());
  }

  private static double loss(LineRun run) {
    return run.march().frictionPascals();
  }

  /** All the lines together in the next size, and in the one after. */
  private static List<Cure> bigger(CureSite site, String id, List<Line> lines) {
    List<Cure> found = new ArrayList<>();
    List<Line> sofar = lines;
    for (int i = 0; i < SIZES; i++) {
      Optional<List<Line>> next = next(sofar, site.catalog());
      if (next.isEmpty()) {
        return found;
      }
      List<Line> laid = next.get();
      found.add(
          new Cure(
              id,
              lines.get(0).id(),
              names(lines) + " in " + name(site.catalog(), laid.get(0)),
              "",
              CureResult.Billing.ALL,
              lease -> with(lease, laid)));
      sofar = laid;
    }
    return found;
  }

  private static Optional<List<Line>> next(List<Line> lines, Catalog catalog) {
    List<Line> laid = new ArrayList<>();
    for (Line line : lines) {
      Optional<Pipe> pipe = catalog.pipe(line.pipe()).flatMap(p -> NextSize.after(p, catalog));
      if (pipe.isEmpty()) {
        return Optional.empty();
      }
      laid.add(line.withPipe(pipe.get().id()).withStatus(Status.NEW));
    }
    return Optional.of(laid);
  }

  private static Lease with(Lease lease, List<Line> lines) {
    Lease changed = lease;
    for (Line line : lines) {
      changed = changed.with(line);
    }
    return changed;
  }

  private static String names(List<Line> lines) {
    return lines.stream().map(Line::name).collect(Collectors.joining(" and "));
  }

  private static String name(Catalog catalog, Line line) {
    return catalog.pipe(line.pipe()).map(Pipe::name).orElse(line.pipe());
  }
}
