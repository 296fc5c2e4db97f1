package tankyard.engine.leasefile;

import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says in plain words what a JSON parser stumbled over. */
final class SyntaxWords {
  private static final Pattern DUPLICATE = Pattern.compile("Duplicate field '(.*)'.*");
  private static final Pattern TOKEN = Pattern.compile("Unrecognized token '(.*?)'.*");
  private static final Pattern CHARACTER =
      Pattern.compile("Unexpected character \\('?(.+?)'? \\(code .*?\\)\\)(?:: (.*))?");
  private static final Pattern CONTROL =
      Pattern.compile("Illegal unquoted character \\(\\(CTRL-CHAR, code (\\d+)\\)\\).*");
  private static final String VALUE =
      "a number, text in quotes, true, false, null, an object or a list";

  private SyntaxWords() {}

  static Problem problem(String file, JsonProcessingException e) {
    String message = e.getOriginalMessage().replaceAll("\\R.*", "");
    Optional<TextPosition> position = Optional.ofNullable(e.getLocation()).map(JsonText::position);
    String[] words = words(e, message);
    return new Problem(file, place(e), position, words[0], words[1]);
  }

  /** What was found and what is accepted. */
  private static String[] words(JsonProcessingException e, String message) {
    if (e instanceof JsonEOFException) {
      return of("the end of the file in the middle of the lease", "the rest of it; it was cut off");
    }
    if (e instanceof StreamConstraintsException) {
      return message.contains("nesting")
          ? of("objects nested too deep", "no more than " + JsonText.DEEPEST + " in one another")
          : of(message, "a shorter text or number");
    }
    Matcher duplicate = DUPLICATE.matcher(message);
    if (duplicate.matches()) {
      return of("the field \"" + duplicate.group(1) + "\" twice in one object", "each field once");
    }
    Matcher token = TOKEN.matcher(message);
    if (token.matches()) {
      return of(token.group(1), VALUE);
    }
    Matcher control = CONTROL.matcher(message);
    if (control.matches()) {
      return of("a line end or control character inside text", "\\n or \\u00.. in its place");
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

  private static String place(JsonProcessingException e) {
    Object processor = e instanceof JsonParseException parse ? parse.getProcessor() : null;
    return processor instanceof JsonParser parser
        ? parser.getParsingContext().pathAsPointer().toString()
        : "";
  }
}
