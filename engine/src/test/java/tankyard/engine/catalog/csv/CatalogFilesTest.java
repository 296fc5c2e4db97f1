package tankyard.engine.catalog.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.TankSize;
import tankyard.engine.units.Length;
import tankyard.engine.working.Source;

class CatalogFilesTest {
  private static final String SOURCES = "key,citation\nbook,A book\n";
  private static final String TANK_HEAD =
      "# Tanks\nid,name,material,nominal_bbl,diameter_ft,shell_ft,overflow_ft,source,provenance\n";
  private static final String TANK = "t1,Tank,steel,210,10,15 ft 6 in,14.5,book,memory\n";

  @Test
  void readsATankWithBareAndNamedUnits() {
    Catalog catalog = tanks(TANK_HEAD + TANK).catalog();
    TankSize tank = catalog.item("t1", TankSize.class).orElseThrow();
    assertThat(tank.diameter()).isEqualTo(Length.ofFeet(10));
    assertThat(tank.shellHeight()).isEqualTo(Length.ofFeet(15.5));
    assertThat(tank.working()).isEmpty();
    assertThat(tank.source()).isEqualTo(Source.memory("A book"));
  }

  @Test
  void readsNothingWhereThereAreNoFiles() {
    CatalogFiles none = CatalogFiles.of(name -> Optional.empty());
    assertThat(none.catalog().all()).isEmpty();
    assertThat(none.prices().all()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "210,10|ten,10|\"nominal_bbl\": \"ten\" is no number",
        "steel|iron|it must be one of polyethylene, steel, pvc",
        "14.5|15.6|must lie between its bottom and the top",
        "t1|Big Tank|can't be an id",
        "book|film|The source \"film\" is not in sources.csv",
        "memory|hearsay|it must be one of read, memory, practice, invented",
        "14.5,||8 cells, but there are 9 columns",
        "210,10,|210,,|\"diameter_ft\" is empty",
        "210,|210 ft,|\"ft\" in \"210 ft\" is no unit of volume"
      })
  void saysFileAndLineOfWhatItRefuses(String was, String is, String words) {
    String broken = TANK_HEAD + TANK.replace("t1", "t0") + TANK.replace(was, is == null ? "" : is);
    assertThatExceptionOfType(CatalogFormatException.class)
        .isThrownBy(() -> tanks(broken).catalog())
        .withMessageStartingWith("tanks.csv, line 4: ")
        .withMessageContaining(words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.50|cheap|it must be a number such as 1250.00",
        "2026-01-02|yesterday|it must be a day such as",
        "yes|perhaps|it must be yes or no",
        "foot|furlong|it must be one of each, foot",
        "USD|dollars|three capital letters",
        "1.50|-1|less than zero"
      })
  void saysFileAndLineOfAPriceItRefuses(String was, String is, String words) {
    String prices =
        "item,basis,price,currency,date,vendor,invented\n"
            + "pipe,foot,1.50,USD,2026-01-02,Store,yes\n".replace(was, is);
    assertThatExceptionOfType(CatalogFormatException.class)
        .isThrownBy(() -> files(Map.of("prices.csv", prices)).prices())
        .withMessageStartingWith("prices.csv, line 2: ")
        .withMessageContaining(words);
  }

  private static CatalogFiles tanks(String text) {
    Map<String, String> files = new HashMap<>();
    files.put("sources.csv", SOURCES);
    files.put("tanks.csv", text);
    return files(files);
  }

  private static CatalogFiles files(Map<String, String> files) {
    return CatalogFiles.of(
        name ->
            Optional.ofNullable(files.get(name))
                .map(t -> new ByteArrayInputStream(t.getBytes(StandardCharsets.UTF_8))));
  }
}
