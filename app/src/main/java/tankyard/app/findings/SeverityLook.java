package tankyard.app.findings;

import java.util.Locale;
import tankyard.engine.checks.Severity;

/** The sign and the style of a severity. */
enum SeverityLook {
  STOP("✕"),
  FIX("▲"),
  LOOK("◆"),
  NOTE("●");

  private final String sign;

  SeverityLook(String sign) {
    this.sign = sign;
  }

  static SeverityLook of(Severity severity) {
    return valueOf(severity.name());
  }

  /** For example {@code ✕ stop}. */
  static String words(Severity severity) {
    return of(severity).sign + " " + severity.words();
  }

  String styleClass() {
    return "severity-" + name().toLowerCase(Locale.ROOT);
  }
}
