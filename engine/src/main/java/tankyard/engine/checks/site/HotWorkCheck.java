package tankyard.engine.checks.site;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Several;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Vessel;
import tankyard.engine.working.Source;

/** New lines on a used tank or vessel, or one that goes away: somebody will want to cut or weld. */
public final class HotWorkCheck implements Check {
  private static final Source SOURCE =
      Source.published("US Chemical Safety Board, Seven Key Lessons on hot work, 2010");

  @Override
  public String id() {
    return "hot-work";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Set<String> newEnds =
        evidence.lease().lines().stream()
            .filter(line -> line.status() == Status.NEW)
            .flatMap(HotWorkCheck::ends)
            .collect(Collectors.toSet());
    List<String> touched =
        evidence
            .lease()
            .things()
            .filter(t -> t instanceof Tank || t instanceof Vessel)
            .filter(
                t ->
                    t.status() == Status.REMOVE
                        || t.status() == Status.HAVE && newEnds.contains(t.id()))
            .map(Thing::name)
            .toList();
    return touched.isEmpty() ? List.of() : List.of(finding(touched));
  }

  private static Stream<String> ends(Line line) {
    return Stream.of(line.from(), line.to());
  }

  private Finding finding(List<String> touched) {
    return Finding.of(
            id(),
            Severity.NOTE,
            "",
            "Work on what has held oil: "
                + Several.named(touched)
                + ". Welding and cutting on and near such tanks has killed many.",
            SOURCE)
        .mendedBy(
            "Before any spark: isolate, drain, clean, test the air inside and go on testing, and a"
                + " written permit. Unions and cold cutting need no flame.");
  }
}
