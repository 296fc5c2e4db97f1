package tankyard.engine.leasefile;

import java.util.Optional;

/**
 * One thing wrong with a lease file.
 *
 * @param file its name
 * @param place the part of the document, as a JSON pointer; empty for the file as a whole
 * @param position where that is in the text, if the file has any
 * @param found what stands there
 * @param accepted what would be taken instead
 */
public record Problem(
    String file, String place, Optional<TextPosition> position, String found, String accepted) {

  /** File, place, what was found and what is accepted, as one line. */
  public String inOneLine() {
    String where = position.map(p -> ":" + p.line() + ":" + p.column()).orElse("");
    String part = place.isEmpty() ? "" : " " + place;
    String line = file + where + part + ": found " + found + "; accepted: " + accepted;
    return line.replaceAll("\\s*\\R\\s*", " ");
  }
}
