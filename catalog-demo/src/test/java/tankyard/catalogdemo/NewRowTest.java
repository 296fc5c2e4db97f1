package tankyard.catalogdemo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.api.Cancel;
import tankyard.engine.api.Tankyard;
import tankyard.engine.catalog.Catalogs;
import tankyard.engine.catalog.TankSize;
import tankyard.engine.catalog.csv.CatalogFiles;
import tankyard.engine.cures.CureResult;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.TankBuilder;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.pricing.BillLine;

/** A tank size and a valve type come in as data alone: with the rows that the how-to page shows. */
class NewRowTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 1);
  private static final String TANK = "tank-steel-180";
  private static final String VALVE = "dump-2-port-1.2";

  /** Which of the page's rows goes into which file, by what it begins with. */
  private static final Map<String, String> ROWS =
      Map.of(
          "tanks.csv", TANK + ",\"",
          "prices.csv", TANK + ",each",
          "sources.csv", "my-shop,",
          "valves.csv", VALVE + ",");

  private final CatalogFiles files = CatalogFiles.of(NewRowTest::withItsRow);
  private final Tankyard tankyard = new Tankyard(files.catalog(), files.prices(), DAY);

  private static Optional<InputStream> withItsRow(String file) {
    return Optional.ofNullable(DemoCatalog.class.getResourceAsStream(file))
        .map(
            in -> {
              String row = ROWS.containsKey(file) ? "\n" + rowOfThePage(ROWS.get(file)) : "";
              return new ByteArrayInputStream((text(in) + row).getBytes(StandardCharsets.UTF_8));
            });
  }

  private static String rowOfThePage(String begins) {
    try {
      List<String> rows =
          Files.readAllLines(Path.of("..", "docs", "howto", "add-a-tank-size.md")).stream()
              .map(String::strip)
              .filter(line -> line.startsWith(begins))
              .toList();
      assertThat(rows).as(begins).hasSize(1);
      return rows.get(0);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(InputStream in) {
    try (in) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Lease demo() {
    try (InputStream in = Catalogs.find().demoLease().orElseThrow()) {
      return LeaseFiles.read("demo.lease.json", in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void theNewTankIsCountedAndPricedWhereALeaseDrawsIt() {
    TankSize size = files.catalog().item(TANK, TankSize.class).orElseThrow();
    Lease demo = demo();
    Tank old = demo.tanks().get(0);
    Lease drawn =
        demo.with(
            TankBuilder.builder(old)
                .model(Optional.of(TANK))
                .diameter(size.diameter())
                .shellHeight(size.shellHeight())
                .overflowHeight(size.overflowHeight())
                .switchHeight(Optional.empty())
                .build());

    List<BillLine> lines =
        tankyard.answer(drawn).bill().lines().stream()
            .filter(line -> line.item().equals(Optional.of(TANK)))
            .toList();

    assertThat(lines).hasSize(1);
    assertThat(lines.get(0).unitPrice())
        .hasValueSatisfying(p -> assertThat(p).isEqualByComparingTo("9400"));
    assertThat(lines.get(0).vendor()).isEqualTo("My Shop");
    assertThat(Catalogs.find().catalog().item(TANK)).isEmpty();
  }

  @Test
  void theNewValveIsOfferedAsAWayOut() {
    List<CureResult> offered =
        tankyard.cures(demo(), Cancel.NEVER).stream()
            .flatMap(book -> book.cures().stream())
            .filter(cure -> cure.id().equals("bigger-dump-valve"))
            .toList();

    assertThat(offered).hasSize(1);
    assertThat(offered.get(0).words()).isEqualTo("2 in lever dump valve, 1.2 in port, Cv 25.8");
    assertThat(offered.get(0).gained().toPsi()).isPositive();
  }
}
