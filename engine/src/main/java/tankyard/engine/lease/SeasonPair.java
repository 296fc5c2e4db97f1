package tankyard.engine.lease;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A summer case and a winter case to hold side by side.
 *
 * @param alike whether they differ by the season alone; if not, what differs between summer and
 *     winter is not the cold alone
 */
public record SeasonPair(DesignCase summer, DesignCase winter, boolean alike) {

  /**
   * Every two cases that differ by the season alone, in the lease's order; where there are none,
   * the two that differ least besides; empty where a season has no case.
   */
  public static List<SeasonPair> of(List<DesignCase> cases) {
    List<SeasonPair> alike = new ArrayList<>();
    List<SeasonPair> others = new ArrayList<>();
    for (DesignCase summer : in(DesignCase.Season.SUMMER, cases)) {
      Optional<SeasonPair> same = Optional.empty();
      for (DesignCase winter : in(DesignCase.Season.WINTER, cases)) {
        SeasonPair pair = new SeasonPair(summer, winter, differences(summer, winter) == 0);
        others.add(pair);
        same = same.isEmpty() && pair.alike() ? Optional.of(pair) : same;
      }
      same.ifPresent(alike::add);
    }
    Comparator<SeasonPair> least =
        Comparator.comparingInt(p -> differences(p.summer(), p.winter()));
    return alike.isEmpty() ? others.stream().min(least).stream().toList() : List.copyOf(alike);
  }

  private static List<DesignCase> in(DesignCase.Season season, List<DesignCase> cases) {
    return cases.stream().filter(c -> c.season() == season).toList();
  }

  private static int differences(DesignCase a, DesignCase b) {
    return differ(a.running(), b.running())
        + differ(a.oilFactor(), b.oilFactor())
        + differ(a.waterFactor(), b.waterFactor())
        + differ(a.sharedSurgeFactor(), b.sharedSurgeFactor());
  }

  private static int differ(Object a, Object b) {
    return Objects.equals(a, b) ? 0 : 1;
  }
}
