package tankyard.engine.catalog.csv;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.CatalogItem;
import tankyard.engine.catalog.PriceList;

/** A folder of CSV files, or what stands for one. */
public final class CatalogFiles {
  private static final Map<String, Function<Row, ? extends CatalogItem>> ITEM_FILES =
      new LinkedHashMap<>();

  static {
    ITEM_FILES.put("poly-pipe.csv", PipeRows::poly);
    ITEM_FILES.put("steel-pipe.csv", PipeRows::steel);
    ITEM_FILES.put("pvc-pipe.csv", PipeRows::pvc);
    ITEM_FILES.put("fibreglass-pipe.csv", PipeRows::fibreglass);
    ITEM_FILES.put("fittings.csv", FittingRows::fitting);
    ITEM_FILES.put("valves.csv", ValveRows::valve);
    ITEM_FILES.put("regulators.csv", ValveRows::regulator);
    ITEM_FILES.put("floats.csv", ValveRows::floatBall);
    ITEM_FILES.put("tanks.csv", VesselRows::tank);
    ITEM_FILES.put("separators.csv", VesselRows::separator);
    ITEM_FILES.put("gun-barrels.csv", VesselRows::gunBarrel);
    ITEM_FILES.put("pumps.csv", VesselRows::pump);
    ITEM_FILES.put("sundries.csv", VesselRows::sundry);
  }

  private final Function<String, Optional<InputStream>> opener;

  private CatalogFiles(Function<String, Optional<InputStream>> opener) {
    this.opener = opener;
  }

  /**
   * Files found by name.
   *
   * @param opener gives a file's bytes, or nothing where there is no such file
   */
  public static CatalogFiles of(Function<String, Optional<InputStream>> opener) {
    return new CatalogFiles(opener);
  }

  public static CatalogFiles in(Path folder) {
    return new CatalogFiles(name -> open(folder.resolve(name)));
  }

  private static Optional<InputStream> open(Path file) {
    try {
      return Files.isRegularFile(file) ? Optional.of(Files.newInputStream(file)) : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The names of the files that are looked for, sources and prices left out. */
  public static List<String> itemFileNames() {
    return List.copyOf(ITEM_FILES.keySet());
  }

  public Catalog catalog() {
    Sources sources = Sources.of(rows("sources.csv", Sources.none()));
    List<CatalogItem> items = new ArrayList<>();
    ITEM_FILES.forEach(
        (file, maker) -> rows(file, sources).forEach(row -> items.add(row.make(maker))));
    return Catalog.of(items);
  }

  public PriceList prices() {
    return PriceList.of(
        rows("prices.csv", Sources.none()).stream()
            .map(row -> row.make(PriceRows::price))
            .toList());
  }

  private List<Row> rows(String file, Sources sources) {
    Optional<InputStream> bytes = opener.apply(file);
    return bytes.isEmpty() ? List.of() : CsvRows.read(file, bytes.get(), sources);
  }
}
