package tankyard.app.style;

import java.util.Locale;

/** Light or dark. */
public enum Shade {
  LIGHT,
  DARK;

  static Shade of(String word) {
    return word.equals(DARK.word()) ? DARK : LIGHT;
  }

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
