package tankyard.engine.checks;

import java.util.List;

/** One rule: it looks at what was worked out and says what a person should know. */
public interface Check {

  /** Short, stable and the name of its page, {@code docs/checks/<id>.md}. */
  String id();

  /** What it found; nothing where all is well or where it can't tell. */
  List<Finding> look(Evidence evidence);
}
