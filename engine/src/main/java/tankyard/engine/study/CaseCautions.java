package tankyard.engine.study;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tankyard.engine.vessels.Retention;
import tankyard.engine.working.Caution;

/**
 * Gathers what the laws of a case say must be read with care: of the liquids and the gas for the
 * whole lease, of friction and rating line by line, of drops and retention vessel by vessel. Each
 * kind is kept once, with the things it holds for, so that the list stays short.
 */
final class CaseCautions {
  private final Map<String, Caution> words = new LinkedHashMap<>();
  private final Map<String, Set<String>> things = new LinkedHashMap<>();
  private final Set<String> wholeLease = new LinkedHashSet<>();
  private final Set<String> withOwnNumbers = new LinkedHashSet<>();

  private CaseCautions() {}

  static List<CaseCaution> of(
      CaseStudy study,
      Collection<LineRun> runs,
      List<SeparatorResult> separators,
      UntypedHeat untyped) {
    CaseCautions all = new CaseCautions();
    all.ofLease(study.oil().cautions());
    all.ofLease(study.brine().cautions());
    study.gas().ifPresent(gas -> all.ofLease(gas.cautions(study.ground())));
    runs.forEach(run -> all.of(run.laid().id(), run.cautions()));
    separators.forEach(s -> all.of(s.separatorId(), ofSeparator(study, s)));
    untyped.caution(runs).ifPresent(all::add);
    return all.said();
  }

  private static List<Caution> ofSeparator(CaseStudy study, SeparatorResult separator) {
    List<Caution> said = new ArrayList<>();
    separator.waterDrops().ifPresent(d -> said.addAll(d.cautions()));
    separator.oilDrops().ifPresent(d -> said.addAll(d.cautions()));
    if (separator.oilMinutes().isPresent()) {
      said.addAll(Retention.Guide.of(study.lease().fluids().oil(), study.ground()).cautions());
    }
    return said;
  }

  private void ofLease(List<Caution> cautions) {
    cautions.forEach(
        caution -> {
          words.putIfAbsent(caution.id(), caution);
          wholeLease.add(caution.id());
        });
  }

  private void of(String thingId, List<Caution> cautions) {
    cautions.forEach(
        caution -> {
          Caution first = words.putIfAbsent(caution.id(), caution);
          if (first != null && !first.equals(caution)) {
            withOwnNumbers.add(caution.id());
          }
          things.computeIfAbsent(caution.id(), id -> new LinkedHashSet<>()).add(thingId);
        });
  }

  private void add(CaseCaution whole) {
    words.put(whole.id(), new Caution(whole.id(), whole.words()));
    things.put(whole.id(), new LinkedHashSet<>(whole.things()));
  }

  private List<CaseCaution> said() {
    return words.values().stream()
        .map(
            c ->
                new CaseCaution(
                    c.id(),
                    c.words() + told(c.id()),
                    wholeLease.contains(c.id())
                        ? List.of()
                        : List.copyOf(things.getOrDefault(c.id(), Set.of()))))
        .toList();
  }

  /** Where each thing has its own, the reader must know whose they are. */
  private String told(String id) {
    return withOwnNumbers.contains(id) && !wholeLease.contains(id)
        ? " (The numbers of the first.)"
        : "";
  }
}
