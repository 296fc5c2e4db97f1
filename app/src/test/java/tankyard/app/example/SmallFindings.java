package tankyard.app.example;

import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Working;

/** Findings on the small lease, one at least of every severity. */
final class SmallFindings {
  private SmallFindings() {}

  static List<Finding> all() {
    return List.of(
        finding(
            "road-out-too-short",
            Severity.FIX,
            "OT1",
            Optional.of("winter"),
            "Oil tank 1: 182 bbl usable, and 222 bbl must find room while the road is out.",
            List.of("A second 210 bbl tank gives 364 bbl.", "A load of 140 bbl would leave room.")),
        finding(
            "pressure-near-limit",
            Severity.LOOK,
            "W3",
            Optional.of("winter"),
            "Well 3: 26.5 psi at the stuffing box, and its limit is 60 psi.",
            List.of()),
        finding(
            "float-not-checked",
            Severity.NOTE,
            "S1",
            Optional.empty(),
            "Separator 1: the pull of the float is not checked; the port is not known.",
            List.of("Measure the port and the ball.")),
        finding(
            "no-way-out",
            Severity.STOP,
            "W2",
            Optional.empty(),
            "Well 2 has no way to a separator.",
            List.of("Draw a flow line from Well 2 to Tee 1.")),
        finding(
            "heights-unknown",
            Severity.LOOK,
            "",
            Optional.empty(),
            "How far the heights may be off is not said; 10 ft are 4.7 psi of this brine.",
            List.of("Say it on the lease's sheet.")));
  }

  private static Finding finding(
      String id,
      Severity severity,
      String thing,
      Optional<String> caseId,
      String words,
      List<String> wayOut) {
    Optional<Working> working =
        severity == Severity.FIX
            ? Optional.of(SmallAnswer.computed("Oil room needed", Volume.ofBarrels(222)).working())
            : Optional.empty();
    return new Finding(id, severity, thing, caseId, words, wayOut, SmallAnswer.MADE_UP, working);
  }
}
