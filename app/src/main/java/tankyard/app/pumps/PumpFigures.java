package tankyard.app.pumps;

import java.util.List;
import java.util.Optional;
import tankyard.app.figures.CaseFigures;
import tankyard.app.figures.FigureRow;
import tankyard.app.figures.FigureSet;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Thing;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.InjectionResult;

/** The rows about injection pumps. */
final class PumpFigures {
  private PumpFigures() {}

  static List<FigureSet> of(CaseFigures figures) {
    Lease lease = figures.answer().lease();
    return lease.injectionPumps().stream()
        .map(pump -> new FigureSet(pump.name(), pump.id(), rows(figures, pump, lease)))
        .filter(set -> !set.rows().isEmpty())
        .toList();
  }

  private static List<FigureRow> rows(CaseFigures figures, InjectionPump pump, Lease lease) {
    return figures
        .rows(c -> injection(c, pump.id()))
        .plain("Pumps", "The rate while it runs.", r -> Optional.of(r.rate()))
        .computed(
            "Runs a day",
            "To put the day's water away; 12 to 20 leaves room for repairs and growth.",
            InjectionResult::hours)
        .computed(
            "At the wellhead",
            "Follows the rate while it runs and not the day's average: this is what a permit limits.",
            InjectionResult::wellhead)
        .computed(
            "At the pump",
            "What its discharge gauge shows while it runs.",
            InjectionResult::discharge)
        .plain("Lost in the line", "Friction between the two.", r -> Optional.of(r.lineLoss()))
        .maybe(
            "Red line on the pump's gauge",
            "There the wellhead is at its permit.",
            InjectionResult::redLine)
        .computed("Power at the shaft", "The motor must give it.", InjectionResult::power)
        .words("Into", "Where the water goes.", r -> Optional.of(name(lease, r.wellId())))
        .rows();
  }

  private static String name(Lease lease, String id) {
    return lease.thing(id).map(Thing::name).orElse(id);
  }

  private static Optional<InjectionResult> injection(CaseResult c, String pumpId) {
    return c.injections().stream().filter(i -> i.pumpId().equals(pumpId)).findFirst();
  }
}
