package tankyard.engine.takeoff;

import java.io.IOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import tankyard.engine.catalog.Sundry;
import tankyard.engine.lease.Status;
import tankyard.engine.units.Figures;

/** Writes what a store is asked for as CSV: new goods and their quantities, no prices. */
public final class StoreListCsv {
  private StoreListCsv() {}

  public static void write(List<TakeoffLine> lines, Appendable out) throws IOException {
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setHeader("text", "item", "quantity", "unit", "pieces", "for")
            .setRecordSeparator('\n')
            .get();
    CSVPrinter printer = new CSVPrinter(out, format);
    for (TakeoffLine line : lines) {
      if (line.status() == Status.NEW && line.nature() == Sundry.Nature.GOODS) {
        printer.printRecord(
            line.text(),
            line.item().orElse(""),
            Figures.significant(line.bought(), 6),
            line.measure().words(),
            line.boughtAs(),
            String.join(" ", line.causes()));
      }
    }
  }
}
