package tankyard.catalogdemo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.api.Tankyard;
import tankyard.engine.catalog.Catalogs;
import tankyard.engine.lease.DumpValve.Around;
import tankyard.engine.lease.DumpValveBuilder;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.SeparatorBuilder;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.takeoff.Takeoff;
import tankyard.engine.takeoff.TakeoffLine;

/**
 * A strainer and a bypass at the dump valve of the first public case, in the least and the bill.
 */
class DumpValvePipingTest {
  private static final Tankyard TANKYARD =
      Tankyard.with(Catalogs.find(), LocalDate.of(2026, 11, 25));

  private static Lease lease(Optional<Around> around) throws IOException {
    Lease lease = LeaseFiles.read(Path.of("../docs/examples/p1-osage-bend.lease.json"));
    Separator bare = lease.separators().get(0);
    return lease.with(
        SeparatorBuilder.builder(bare)
            .dumpValve(DumpValveBuilder.builder(bare.dumpValve()).around(around).build())
            .build());
  }

  private static double frictionPsi(Optional<Around> around) throws IOException {
    return TANKYARD.answer(lease(around)).windows().get(0).least().orElseThrow().friction().toPsi();
  }

  /**
   * By hand: 6.30 gpm in a bore of 1.943 in runs at 0.4085 x 6.30/1.943^2 = 0.682 ft/s, a head of
   * 0.00722 ft; a clean Y strainer of K 2.5 (common tables, from memory) loses 2.5 of them in brine
   * of 1.06.
   */
  @Test
  void theStrainerCountsInTheLeast() throws IOException {
    double bare = frictionPsi(Optional.empty());
    double strainer = frictionPsi(Optional.of(Around.STRAINER));
    assertThat(strainer - bare).isCloseTo(2.5 * 0.00722 * 1.06 * 0.4331, within(2e-4));
    assertThat(frictionPsi(Optional.of(Around.STRAINER_AND_BYPASS))).isGreaterThan(strainer);
  }

  @Test
  void theBillCountsWhatIsDrawn() throws IOException {
    Optional<Around> both = Optional.of(Around.STRAINER_AND_BYPASS);
    Optional<Around> strainer = Optional.of(Around.STRAINER);
    assertThat(count(Optional.empty(), "strainer-steel-2")).isZero();
    assertThat(count(strainer, "strainer-steel-2")).isEqualTo(1);
    assertThat(count(both, "strainer-steel-2")).isEqualTo(1);
    assertThat(count(both, "tee-steel-2") - count(strainer, "tee-steel-2")).isEqualTo(2);
    assertThat(count(strainer, "tee-steel-2")).isEqualTo(count(Optional.empty(), "tee-steel-2"));
  }

  private static double count(Optional<Around> around, String item) throws IOException {
    return Takeoff.of(lease(around), TANKYARD.catalog(), line -> 10).stream()
        .filter(line -> line.item().filter(item::equals).isPresent())
        .mapToDouble(TakeoffLine::drawn)
        .sum();
  }
}
