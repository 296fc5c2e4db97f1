package tankyard.engine.checks;

import java.util.List;
import java.util.Set;

/** One rule: it looks at what was worked out and says what a person should know. */
public interface Check {

  /** Short, stable and the name of its page, {@code docs/checks/<id>.md}. */
  String id();

  /**
   * The ids of the findings it may give, each with a page. A rule that passes on what others found
   * gives theirs.
   */
  default Set<String> gives() {
    return Set.of(id());
  }

  /** What it found; nothing where all is well or where it can't tell. */
  List<Finding> look(Evidence evidence);
}
