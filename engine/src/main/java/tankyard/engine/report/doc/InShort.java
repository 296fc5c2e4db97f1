package tankyard.engine.report.doc;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.Diagnosis;
import tankyard.engine.study.GunBarrelResult;
import tankyard.engine.study.StorageResult;
import tankyard.engine.units.FeetInches;
import tankyard.engine.window.GasBreak;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Window;

/** The first page for somebody who reads no second one; and what could not be worked out. */
final class InShort {
  private final Draft draft;
  private final Results results;

  private InShort(Draft draft) {
    this.draft = draft;
    this.results = draft.results();
  }

  static List<Section> of(Draft draft) {
    InShort section = new InShort(draft);
    List<Section> found = new ArrayList<>();
    List<Block> blocks = new ArrayList<>();
    List<String> points = section.points();
    if (!points.isEmpty()) {
      blocks.add(new Block.Points(points));
    }
    String note = draft.results().lease().note();
    if (!note.isBlank()) {
      blocks.add(new Block.Words("Note in the lease file: " + note));
    }
    if (!blocks.isEmpty()) {
      found.add(new Section("In short", blocks));
    }
    List<Diagnosis> diagnoses = draft.results().diagnoses();
    if (!diagnoses.isEmpty()) {
      found.add(
          Section.of(
              "What could not be worked out",
              new Block.Points(diagnoses.stream().map(Diagnosis::words).toList())));
    }
    return found;
  }

  /** A sentence for the window of each separator. */
  static List<String> windows(Draft draft) {
    InShort section = new InShort(draft);
    return section.results.windows().stream().map(section::window).toList();
  }

  private List<String> points() {
    List<String> points = new ArrayList<>(windows(draft));
    results.cases().stream()
        .findFirst()
        .ifPresent(c -> c.gunBarrels().forEach(g -> points.add(gunBarrel(g))));
    results.cases().stream().findFirst().ifPresent(c -> points.add(rates(c)));
    if (!results.findings().isEmpty()) {
      points.add(findings());
    }
    if (!results.bill().lines().isEmpty()) {
      points.add("The bill comes to " + results.bill().totals().words() + ".");
    }
    return points;
  }

  private String window(Window window) {
    String from = window.least().map(l -> end("at least ", l)).orElse("");
    String to = window.most().map(l -> most(window, l)).orElse("");
    String both =
        from.isEmpty() || to.isEmpty()
            ? from + to
            : from + (to.startsWith("no ") ? ", and " : ", ") + to;
    String name = window.separatorName();
    if (both.isEmpty()) {
      return name + ": nothing bounds the gauge yet.";
    }
    String set =
        window
            .setting()
            .map(
                s ->
                    " Set the regulator to "
                        + draft.words(Figure.READING, s.regulator().value())
                        + (s.fits() ? "." : ", which does not fit."))
            .orElse(" No setting works.");
    return name
        + (both.startsWith("no ") ? ": " : ": the gauge must read ")
        + both
        + "."
        + window.notValid().map(this::notValid).orElse(set);
  }

  /** A most that is only of what was typed says so. */
  private String most(Window window, PressureLimit most) {
    long unknown = window.limitsNotKnown();
    String words =
        most.beyondAnyGauge()
            ? most.whyNoGauge(Figure.READING.unit(draft.units()))
            : end("at most ", unknown == 0 ? "" : " of what is typed", most);
    return unknown == 0
        ? words
        : words + "; " + unknown + (unknown == 1 ? " limit is" : " limits are") + " not known";
  }

  private String notValid(GasBreak gas) {
    return " Not valid, so no setting is given: gas is "
        + draft.words(Figure.SHARE, gas.gas().part().value())
        + " of what comes in.";
  }

  private String gunBarrel(GunBarrelResult barrel) {
    return results.nameOf(barrel.gunBarrelId())
        + ": cut the weir of its leg at "
        + FeetInches.print(barrel.cut().cut().value())
        + ". It holds "
        + draft.words(Figure.READING, barrel.onWells().value())
        + " against a well on its ground, come what may.";
  }

  private String end(String words, PressureLimit limit) {
    return end(words, "", limit);
  }

  private String end(String words, String of, PressureLimit limit) {
    return words
        + Figure.READING.words(limit.gauge().value(), draft.units(), limit.rounding())
        + of
        + " ("
        + limit.nameIn(draft.units())
        + ")";
  }

  private String rates(CaseResult first) {
    StorageResult storage = first.storage();
    long wells = results.lease().wells().stream().filter(w -> w.status().stays()).count();
    return wells
        + (wells == 1 ? " well makes " : " wells make ")
        + draft.words(Figure.RATE, storage.oilRate())
        + " of oil and "
        + draft.words(Figure.RATE, storage.waterRate())
        + " of water in case \""
        + first.designCase().name()
        + "\".";
  }

  private String findings() {
    String counts =
        List.of(Severity.values()).stream()
            .map(s -> count(s) + " " + s.words())
            .filter(s -> !s.startsWith("0 "))
            .collect(Collectors.joining(", "));
    return "Findings: " + counts + ". The first: " + FindingSection.ranked(results).get(0).words();
  }

  private long count(Severity severity) {
    return results.findings().stream().map(Finding::severity).filter(s -> s == severity).count();
  }
}
