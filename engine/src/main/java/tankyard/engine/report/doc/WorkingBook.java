package tankyard.engine.report.doc;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tankyard.engine.working.Working;

/**
 * Gives each working a number, with those its inputs came from right behind it. Two that say the
 * same share a number: the same line loss stands behind several wells.
 */
public final class WorkingBook {
  private final Map<Working, Integer> numbers = new LinkedHashMap<>();

  /** The number of a working, counted from 1. */
  public int number(Working working) {
    Integer known = numbers.get(working);
    if (known != null) {
      return known;
    }
    int mine = numbers.size() + 1;
    numbers.put(working, mine);
    working.from().forEach(this::number);
    return mine;
  }

  /** Every working so far, in the order of its number. */
  public List<NumberedWorking> all() {
    List<NumberedWorking> all = new ArrayList<>();
    numbers.forEach(
        (working, number) ->
            all.add(
                new NumberedWorking(
                    number,
                    working,
                    working.from().stream().map(numbers::get).distinct().toList())));
    return all;
  }
}
