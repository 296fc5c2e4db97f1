package tankyard.engine.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tankyard.engine.lease.Status;

/** Adds up what the rules count: the same thing of the same kind and status is one line. */
final class Tally {

  private record Key(TakeoffKind kind, Ware ware, Status status, boolean comesWith) {}

  private static final class Sum {
    private final List<Share> shares = new ArrayList<>();
    private final Set<TakeoffRule> rules = new LinkedHashSet<>();
  }

  private final Map<Key, Sum> sums = new LinkedHashMap<>();
  private TakeoffRule rule;

  void runningRule(TakeoffRule running) {
    rule = running;
  }

  void add(TakeoffKind kind, Ware ware, double quantity, Status status, String... causes) {
    put(new Key(kind, ware, status, false), quantity, causes);
  }

  /** Adds what usually comes with the main thing of its kind. */
  void addWith(TakeoffKind kind, Ware ware, double quantity, Status status, String... causes) {
    put(new Key(kind, ware, status, true), quantity, causes);
  }

  private void put(Key key, double quantity, String... causes) {
    if (!(quantity > 0)) {
      return;
    }
    Sum sum = sums.computeIfAbsent(key, k -> new Sum());
    sum.shares.add(new Share(List.of(causes), quantity));
    sum.rules.add(rule);
  }

  List<TakeoffLine> lines() {
    List<TakeoffLine> lines = new ArrayList<>();
    sums.forEach((key, sum) -> lines.add(line(key, sum)));
    return lines;
  }

  private static TakeoffLine line(Key key, Sum sum) {
    double drawn = sum.shares.stream().mapToDouble(Share::quantity).sum();
    return new TakeoffLine(
        key.kind(),
        key.ware().item(),
        key.ware().text(),
        drawn,
        Purchase.wholeOnes(drawn, key.ware().measure()),
        "",
        key.ware().measure(),
        key.status(),
        key.comesWith(),
        key.ware().nature(),
        sum.shares,
        List.copyOf(sum.rules));
  }
}
