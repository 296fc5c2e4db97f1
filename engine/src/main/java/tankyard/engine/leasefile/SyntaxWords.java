package tankyard.engine.leasefile;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says in plain words what a JSON parser stumbled over. */
final class SyntaxWords {
  private static final Pattern DUPLICATE = Pattern.compile("Duplicate field '(.*)'.*");
  private static final Pattern TOKEN =
      Pattern.compile("(?:Unrecognized|Non-standard) token '(.*?)'.*");
  private static final Pattern CLOSE = Pattern.compile("Unexpected close marker '(.)': (.*)");
  private static final Pattern NUMBER = Pattern.compile("Invalid numeric value: (.*)");
  private static final Pattern CHARACTER =
      Pattern.compile("Unexpected character \\('?(.+?)'? \\(code .*?\\)\\)(?:: (.*))?");
  private static final Pattern ESCAPE =
      Pattern.compile("Unrecognized character escape '?(.+?)'? \\(code .*");
  private static final Pattern CONTROL =
      Pattern.compile("Illegal (unquoted )?character \\(\\(CTRL-CHAR, code (\\d+)\\)\\).*");
  private static final String VALUE =
      "a number, text in quotes, true, false, null, an object or a list";

  private SyntaxWords() {}

  /**
   * The problem in plain words.
   *
   * @param parser standing where it stumbled
   */
  static Problem problem(String file, JsonProcessingException e, JsonParser parser) {
    String message = e.getOriginalMessage().replaceAll("\\R.*", "");
    JsonLocation location = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
    String place = parser.getParsingContext().pathAsPointer().toString();
    String[] words = words(e, message);
    return new Problem(file, place, Optional.of(JsonText.position(location)), words[0], words[1]);
  }

  /** What was found and what is accepted. */
  private static String[] words(JsonProcessingException e, String message) {
    if (message.startsWith("Unexpected end-of-input")) {
      return of("the end of the file in the middle of the lease", "the rest of it; it was cut off");
    }
    if (e instanceof StreamConstraintsException) {
      return message.contains("nesting")
          ? of("objects nested too deep", "no more than " + JsonText.DEEPEST + " in one another")
          : of(
              "a number or text without end",
              "numbers of no more than " + JsonText.LONGEST_NUMBER + " digits");
    }
    Matcher duplicate = DUPLICATE.matcher(message);
    if (duplicate.matches()) {
      return of("the field \"" + duplicate.group(1) + "\" twice in one object", "each field once");
    }
    Matcher token = TOKEN.matcher(message);
    if (token.matches()) {
      return of(token.group(1), VALUE);
    }
    Matcher close = CLOSE.matcher(message);
    if (close.matches()) {
      return of("'" + close.group(1) + "' that closes nothing", "one } or ] for each { or [");
    }
    Matcher number = NUMBER.matcher(message);
    if (number.matches()) {
      return of("an odd number (" + number.group(1) + ")", "a number such as 0.5 or -12");
    }
    Matcher control = CONTROL.matcher(message);
    if (control.matches()) {
      return control.group(1) == null
          ? of("a character of code " + control.group(2), VALUE)
          : of("a line end or control character inside text", "\\n or \\u00.. in its place");
    }
    Matcher escape = ESCAPE.matcher(message);
    if (escape.matches()) {
      return of("\\" + escape.group(1) + " in text", "\\\" \\\\ \\/ \\b \\f \\n \\r \\t \\u....");
    }
    Matcher character = CHARACTER.matcher(message);
    if (character.matches()) {
      return of("'" + character.group(1) + "'", accepted(character.group(2)));
    }
    return of("something that is no JSON (" + message + ")", "JSON text by RFC 8259");
  }

  private static String accepted(String expectation) {
    if (expectation == null || expectation.startsWith("expected a valid value")) {
      return VALUE;
    }
    if (expectation.contains("comment")) {
      return "no remarks; put them into a note";
    }
    return expectation
        .replace(
            "was expecting double-quote to start field name", "a field's name in double quotes")
        .replace(
            "was expecting a colon to separate field name and value", "a colon before the value")
        .replace(
            "was expecting comma to separate Object entries", "a comma or } after a field's value")
        .replace(
            "was expecting comma to separate Array entries", "a comma or ] after a list's item");
  }

  private static String[] of(String found, String accepted) {
    return new String[] {found, accepted};
  }
}
