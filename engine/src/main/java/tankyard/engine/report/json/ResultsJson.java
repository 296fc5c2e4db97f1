package tankyard.engine.report.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Finding;
import tankyard.engine.cures.CureBook;
import tankyard.engine.lease.Lease;
import tankyard.engine.outlook.Outlook;
import tankyard.engine.pricing.Bill;
import tankyard.engine.report.doc.LeaseReport;
import tankyard.engine.report.doc.Results;
import tankyard.engine.report.doc.WorkingBook;
import tankyard.engine.study.Assumption;
import tankyard.engine.study.BermResult;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.Clearance;
import tankyard.engine.study.Diagnosis;
import tankyard.engine.study.PoleLoad;
import tankyard.engine.study.PumpDrive;
import tankyard.engine.study.SeparatorChoice;
import tankyard.engine.study.Setback;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.window.Window;

/** Writes everything that was worked out as JSON. */
public final class ResultsJson {
  /** Says what the document is. */
  static final String FORMAT = "tankyard-results";

  /** Goes up when a field is renamed or its meaning changes, not when one is added. */
  static final int VERSION = 1;

  private static final ObjectMapper MAPPER = Mapping.mapper();

  private ResultsJson() {}

  public static String write(Results results) {
    WorkingBook book = new WorkingBook();
    ObjectWriter writer = MAPPER.writer(printer()).withAttribute(ComputedSerializer.BOOK, book);
    try {
      return writer.writeValueAsString(document(results, book)) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("Results could not be written as JSON", e);
    }
  }

  /** The same on every machine: a line feed ends a line. */
  private static PrettyPrinter printer() {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(
            Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER));
    printer.indentArraysWith(indenter);
    printer.indentObjectsWith(indenter);
    return printer;
  }

  private static Document document(Results results, WorkingBook book) {
    return new Document(
        FORMAT,
        VERSION,
        LeaseReport.STANDING,
        results.date(),
        Named.of(results.lease()),
        LeaseReport.headline(results, UnitSystem.FIELD),
        results.windows(),
        results.cases(),
        results.yard().berms(),
        results.yard().setbacks(),
        results.yard().power(),
        results.yard().drives(),
        Clearance.of(results.lease()),
        results.choices(),
        results.outlook(),
        results.findings(),
        results.bill(),
        results.cures(),
        results.diagnoses(),
        results.assumptions(),
        new Workings(book));
  }

  /** The document; the workings come last, since writing the rest gathers them. */
  record Document(
      String format,
      int version,
      String standing,
      LocalDate date,
      Named lease,
      List<String> headline,
      List<Window> windows,
      List<CaseResult> cases,
      List<BermResult> berms,
      List<Setback> setbacks,
      List<PoleLoad> power,
      List<PumpDrive> drives,
      List<Clearance> clearances,
      List<SeparatorChoice> choices,
      Optional<Outlook> outlook,
      List<Finding> findings,
      Bill bill,
      List<CureBook> cures,
      List<Diagnosis> diagnoses,
      List<Assumption> assumptions,
      Workings workings) {}

  /** The lease by name, and what every id stands for. */
  record Named(String name, String note, List<Thing> things) {
    static Named of(Lease lease) {
      List<Thing> things =
          new ArrayList<>(lease.things().map(t -> new Thing(t.id(), t.kind(), t.name())).toList());
      lease.lines().forEach(l -> things.add(new Thing(l.id(), l.kind(), l.name())));
      return new Named(lease.name(), lease.note(), things);
    }
  }

  /** What an id stands for. */
  record Thing(String id, String kind, String name) {}

  /** The numbered workings, read when they are written. */
  record Workings(WorkingBook book) {}
}
