package tankyard.engine.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.PriceList;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.takeoff.Takeoff;
import tankyard.engine.takeoff.TakeoffLine;

/**
 * The price of the first worked design case from its quotes, reckoned by hand: $72,763, and $83,677
 * with 15 % contingency.
 */
class PublicPriceCheckedTest {
  private static final Path FILE = Path.of("../docs/examples/p1-osage-bend-priced.lease.json");

  @Test
  void osageBendCostsWhatTheHandSumSays() throws Exception {
    Bill bill = bill(LeaseFiles.read(FILE));
    assertThat(bill.totals().subtotal().doubleValue()).isCloseTo(72_763, within(727.0));
    assertThat(bill.totals().total().doubleValue()).isCloseTo(83_677, within(836.0));
    assertThat(bill.totals().unpriced()).isZero();
    assertThat(bill.notUsed()).isEmpty();
  }

  /** One tank less of the three at $9,500. */
  @Test
  void aTankLessCostsATankLess() throws Exception {
    Lease lease = LeaseFiles.read(FILE);
    double with = bill(lease).totals().subtotal().doubleValue();
    double without = bill(lease.without("OT2")).totals().subtotal().doubleValue();
    assertThat(with - without).isCloseTo(9_500, within(1.0));
  }

  private static Bill bill(Lease lease) {
    List<TakeoffLine> takeoff = Takeoff.of(lease, Catalog.empty(), line -> metres(lease, line));
    Catalog own = Catalog.empty().withOwnPipes(lease.ownPipes());
    return Pricing.price(
        takeoff, lease.prices(), PriceList.empty(), own, LocalDate.of(2026, 11, 25));
  }

  /** The straight line and its slack, or the length that was measured. */
  private static double metres(Lease lease, Line line) {
    double straight =
        lease
            .thing(line.from())
            .orElseThrow()
            .at()
            .metresTo(lease.thing(line.to()).orElseThrow().at());
    double slack = line.slack().map(s -> s.ratio()).orElse(0.0);
    return line.length().map(l -> l.metres()).orElse(straight * (1 + slack));
  }
}
