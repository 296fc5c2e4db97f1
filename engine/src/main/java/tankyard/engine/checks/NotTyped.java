package tankyard.engine.checks;

import tankyard.engine.working.Source;

/** What a finding rests on that tells of a limit left empty. */
public final class NotTyped {
  public static final Source SOURCE =
      Source.definition("a limit nobody typed neither passes nor governs");

  private NotTyped() {}
}
