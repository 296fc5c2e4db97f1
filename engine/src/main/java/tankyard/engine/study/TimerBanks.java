package tankyard.engine.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The wells dealt into two banks whose timers never run together: each bank has half the day. A
 * well that needs more than half a day runs with both. The largest are dealt first, each to the
 * bank that has less: not always the most even deal, but near it. One deal holds for the whole
 * lease, since a well has one timer, however many lines it shares.
 */
final class TimerBanks {
  /** Which bank a well runs with. */
  enum Bank {
    FIRST,
    SECOND,
    BOTH
  }

  private static final double HALF = 0.5;

  /** Twelve hours typed in minutes are twelve hours. */
  private static final double SLIP = 1e-9;

  private final Map<String, Bank> bankOf = new LinkedHashMap<>();

  private TimerBanks() {}

  static TimerBanks of(List<WellFlow> wells) {
    TimerBanks banks = new TimerBanks();
    List<WellFlow> movable = new ArrayList<>();
    for (WellFlow well : wells) {
      banks.bankOf.put(well.well().id(), Bank.BOTH);
      if (well.shareOfDay() <= HALF + SLIP) {
        movable.add(well);
      }
    }
    movable.sort(Comparator.comparingDouble(WellFlow::pumped).reversed());
    double first = 0;
    double second = 0;
    for (WellFlow well : movable) {
      boolean toFirst = first <= second;
      banks.bankOf.put(well.well().id(), toFirst ? Bank.FIRST : Bank.SECOND);
      first += toFirst ? well.pumped() : 0;
      second += toFirst ? 0 : well.pumped();
    }
    return banks;
  }

  /** Ids of those wells that are in a bank. */
  List<String> of(Bank bank, List<WellFlow> some) {
    return some.stream().map(w -> w.well().id()).filter(id -> bankOf.get(id) == bank).toList();
  }

  /** The most that comes from some of the wells together, m3/s. */
  double peak(List<WellFlow> some) {
    Map<Bank, Double> sums =
        some.stream()
            .collect(
                Collectors.groupingBy(
                    w -> bankOf.getOrDefault(w.well().id(), Bank.BOTH),
                    Collectors.summingDouble(WellFlow::pumped)));
    // No timer holds back the water that is brought to the wells.
    return some.stream().mapToDouble(WellFlow::returned).sum()
        + sums.getOrDefault(Bank.BOTH, 0.0)
        + Math.max(sums.getOrDefault(Bank.FIRST, 0.0), sums.getOrDefault(Bank.SECOND, 0.0));
  }
}
