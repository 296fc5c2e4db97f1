package tankyard.engine.checks.vessels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.NotTyped;
import tankyard.engine.checks.Several;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.window.NotChecked;
import tankyard.engine.window.Window;

/** Limits nobody typed: they neither pass nor govern, and that must be known. */
public final class NotCheckedCheck implements Check {
  private static final String BOX = "stuffing box";

  @Override
  public String id() {
    return "limits-not-checked";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    List<Finding> found = new ArrayList<>();
    for (Window window : evidence.windows()) {
      // Heat has a finding of its own, pipe-heat-unknown, which names the lines.
      List<String> unknown =
          window.notChecked().stream()
              .filter(w -> !NotChecked.subject(w).equals(NotChecked.HEAT))
              .toList();
      if (!unknown.isEmpty()) {
        found.add(finding(window, unknown));
      }
    }
    evidence.survey().gunBarrels().forEach(g -> boxes(evidence, g).ifPresent(found::add));
    return found;
  }

  /** A gun barrel has no window; only the boxes of its wells can be unknown. */
  private Optional<Finding> boxes(Evidence evidence, GunBarrel barrel) {
    List<String> unknown =
        evidence.cases().stream()
            .limit(1)
            .flatMap(c -> c.wells().stream())
            .filter(w -> w.separatorId().equals(barrel.id()) && w.limit().isEmpty())
            .map(w -> evidence.nameOf(w.wellId()))
            .toList();
    return unknown.isEmpty() ? Optional.empty() : Optional.of(finding(barrel, unknown));
  }

  private Finding finding(GunBarrel barrel, List<String> wells) {
    return Finding.of(
            id(),
            Severity.NOTE,
            barrel.id(),
            "Whether the stuffing boxes of "
                + Several.named(wells)
                + " stand "
                + barrel.name()
                + "'s weight is not checked: nobody typed their limits.",
            NotTyped.SOURCE)
        .mendedBy("Type what each stuffing box is trusted with.");
  }

  private Finding finding(Window window, List<String> unknown) {
    List<String> boxes = unknown.stream().filter(NotCheckedCheck::isBox).toList();
    List<String> others = unknown.stream().filter(w -> !isBox(w)).toList();
    List<String> what =
        new ArrayList<>(others.stream().map(NotChecked::subject).distinct().toList());
    List<String> ways = new ArrayList<>(others);
    if (boxes.size() == 1) {
      what.add(NotChecked.subject(boxes.get(0)));
      ways.add(boxes.get(0));
    } else if (!boxes.isEmpty()) {
      what.add("the stuffing boxes of " + boxes.size() + " wells");
      ways.add("Stuffing boxes: the limits of " + boxes.size() + " are not known.");
    }
    return Finding.of(
            id(),
            Severity.NOTE,
            window.separatorId(),
            "The window of "
                + window.separatorName()
                + " leaves out what nobody typed: "
                + Several.named(what)
                + ". It neither passes nor governs.",
            NotTyped.SOURCE)
        .mendedBy(ways);
  }

  private static boolean isBox(String words) {
    return NotChecked.subject(words).endsWith(BOX);
  }
}
