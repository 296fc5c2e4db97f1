package tankyard.engine.report.doc;

import java.util.function.BiFunction;
import tankyard.engine.units.UnitSystem;

/** What can be printed of a lease, each for the people who need just that. */
public enum Page {
  /** Everything that was worked out. */
  SHEET("sheet", true, LeaseReport::of),
  /** Hangs at the battery. */
  SETTINGS("settings", false, SettingsReport::of),
  /** Goes with whoever gauges the tanks, in feet and inches as gauge lines are marked. */
  GAUGE("gauge", false, (results, units) -> GaugeTableReport.of(results));

  private final String word;
  private final boolean tellsCures;
  private final BiFunction<Results, UnitSystem, Report> maker;

  Page(String word, boolean tellsCures, BiFunction<Results, UnitSystem, Report> maker) {
    this.word = word;
    this.tellsCures = tellsCures;
    this.maker = maker;
  }

  /** As it is typed, and the first part of its file's name. */
  public String word() {
    return word;
  }

  /** Whether it needs the results with what would help, which take a dozen answers to work out. */
  public boolean tellsCures() {
    return tellsCures;
  }

  public Report of(Results results, UnitSystem units) {
    return maker.apply(results, units);
  }
}
