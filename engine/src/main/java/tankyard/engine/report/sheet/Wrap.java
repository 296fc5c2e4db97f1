package tankyard.engine.report.sheet;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines at its blanks; a word too long for a line is cut. */
final class Wrap {
  private Wrap() {}

  static List<String> lines(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split("\\s+")) {
      String rest = word;
      if (line.length() > 0 && line.length() + 1 + rest.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (rest.length() > width) {
        lines.add(rest.substring(0, width));
        rest = rest.substring(width);
      }
      line.append(line.length() > 0 ? " " : "").append(rest);
    }
    lines.add(line.toString());
    return lines;
  }

  /** The same with a first line that starts otherwise than the rest. */
  static String hanging(String first, String text, int width) {
    String indent = " ".repeat(first.length());
    return first + String.join("\n" + indent, lines(text, width - first.length())) + "\n";
  }

  static int longestWord(String text) {
    int longest = 0;
    for (String word : text.strip().split("\\s+")) {
      longest = Math.max(longest, word.length());
    }
    return longest;
  }
}
