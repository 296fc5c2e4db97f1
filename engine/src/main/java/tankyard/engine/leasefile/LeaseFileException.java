package tankyard.engine.leasefile;

import java.io.IOException;
import java.util.List;

/** A lease file that can't be read or can't be written; it says what is wrong, worst first. */
public final class LeaseFileException extends IOException {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  LeaseFileException(List<Problem> problems, Throwable cause) {
    super(problems.get(0).inOneLine(), cause);
    this.problems = List.copyOf(problems);
  }

  LeaseFileException(Problem problem) {
    this(List.of(problem), null);
  }

  /** At least one, in the order to look at them; the message is the first. */
  public List<Problem> problems() {
    return problems;
  }
}
