package tankyard.engine.report.doc;

import java.util.List;
import tankyard.engine.working.Working;

/**
 * A working in the appendix.
 *
 * @param number by which tables and other workings point to it
 * @param from numbers of the workings its inputs came from
 */
public record NumberedWorking(int number, Working working, List<Integer> from) {
  public NumberedWorking {
    from = List.copyOf(from);
  }
}
