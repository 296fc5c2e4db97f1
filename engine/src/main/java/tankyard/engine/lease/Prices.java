package tankyard.engine.lease;

import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Fraction;

/**
 * What the owner was quoted, and what he adds on top.
 *
 * @param contingency on the whole
 * @param tax on goods
 */
public record Prices(List<Quote> quotes, Optional<Fraction> contingency, Optional<Fraction> tax) {
  public Prices {
    quotes = List.copyOf(quotes);
  }

  public static Prices none() {
    return new Prices(List.of(), Optional.empty(), Optional.empty());
  }
}
