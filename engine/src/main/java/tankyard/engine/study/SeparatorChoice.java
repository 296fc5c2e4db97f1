package tankyard.engine.study;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Quantity;
import tankyard.engine.working.Computed;

/**
 * Which of the catalogue's separators of the drawn shape would do, by size: the smallest that does,
 * the one before it and two after it, which may be too short for what they are wide. Where none
 * does, the fewest of a size side by side.
 */
public record SeparatorChoice(String separatorId, List<Candidate> candidates) {
  public SeparatorChoice {
    candidates = List.copyOf(candidates);
  }

  /** The smallest that does; empty where none is large enough. */
  public Optional<Candidate> pick() {
    return candidates.stream().filter(Candidate::enough).findFirst();
  }

  /** The least that those cost that would do, where any of them has a price. */
  public Optional<Candidate> cheapest() {
    return candidates.stream()
        .filter(size -> size.enough() && size.cost().isPresent())
        .min(Comparator.comparing(size -> size.cost().orElseThrow().amount()));
  }

  /**
   * Money for all of them, by the catalogue's price list.
   *
   * @param currency three letters
   */
  public record Cost(BigDecimal amount, String currency) {
    public String words() {
      return Figures.grouped(amount.setScale(0, RoundingMode.HALF_UP).doubleValue())
          + " "
          + currency;
    }
  }

  /**
   * One size, with its interface mid-vessel, in the case that asks most of it.
   *
   * @param model catalogue item
   * @param count how many of it side by side, each with its share of what comes
   * @param enough whether it holds its liquids as long, and parts drops as small, as is asked
   * @param binds what asks most of it, in words
   * @param caseId the case in which it does
   * @param governs the minutes or the drop that binds
   * @param cost of all of them side by side; empty where the store has no price
   */
  public record Candidate(
      String model,
      String name,
      int count,
      boolean enough,
      String binds,
      String caseId,
      Computed<? extends Quantity> governs,
      Optional<Cost> cost) {

    /** For example "2 side by side: 36 in x 10 ft separator". */
    public String words() {
      return count == 1 ? name : count + " side by side: " + name;
    }
  }
}
