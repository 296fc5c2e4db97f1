package tankyard.engine.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tankyard.engine.pricing.BillCsv;
import tankyard.engine.report.doc.LeaseReport;
import tankyard.engine.report.doc.Results;
import tankyard.engine.report.json.ResultsJson;
import tankyard.engine.report.map.LeaseMap;
import tankyard.engine.report.sheet.PlainSheet;
import tankyard.engine.units.UnitSystem;

/** Everything that can be written of one answer. */
record Products(Results results, UnitSystem units, boolean dark) {

  String sheet() {
    return PlainSheet.print(LeaseReport.of(results, units));
  }

  /** Without the workings. */
  String shortSheet() {
    return PlainSheet.printShort(LeaseReport.of(results, units));
  }

  String json() {
    return ResultsJson.write(results);
  }

  String bill() {
    StringBuilder csv = new StringBuilder();
    try {
      BillCsv.write(results.bill(), csv);
    } catch (IOException e) {
      throw new IllegalStateException("Text in memory can always be written", e);
    }
    return csv.toString();
  }

  /** Draws the map in the format its name asks for. */
  void writeMap(Target target) {
    LeaseMap map = map();
    if (target.toString().toLowerCase(Locale.ROOT).endsWith(".png")) {
      target.write(map.png());
    } else {
      target.write(map.svg());
    }
  }

  private LeaseMap map() {
    return LeaseMap.of(results, units, dark);
  }

  /** Writes everything into a folder and gives the names of the files. */
  List<String> writeAll(Target folder) {
    Target place = folder.folder();
    List<String> written = new ArrayList<>();
    written.add(write(place.in("sheet.txt"), sheet()));
    written.add(write(place.in("map.svg"), map().svg()));
    Target png = place.in("map.png");
    png.write(map().png());
    written.add(png.toString());
    written.add(write(place.in("bill.csv"), bill()));
    written.add(write(place.in("result.json"), json()));
    return written;
  }

  private static String write(Target target, String text) {
    target.write(text);
    return target.toString();
  }
}
