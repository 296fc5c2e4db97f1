package tankyard.engine.report.doc;

import java.time.LocalDate;
import java.util.List;

/**
 * What a report says.
 *
 * @param title the lease's name
 * @param standing the line that stands on every print
 * @param headlines every number that has a working
 */
public record Report(
    String title,
    LocalDate date,
    String standing,
    List<Section> sections,
    List<NumberedWorking> workings,
    List<Headline> headlines) {
  public Report {
    sections = List.copyOf(sections);
    workings = List.copyOf(workings);
    headlines = List.copyOf(headlines);
  }
}
