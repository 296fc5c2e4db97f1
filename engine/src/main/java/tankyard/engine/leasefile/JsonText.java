package tankyard.engine.leasefile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/**
 * The text of a file as JSON, by the letter of RFC 8259 and a little stricter: no field twice in
 * one object, nothing after the end, no endless nesting.
 */
final class JsonText {
  /** Far deeper than any lease; a deeper file is not one, and might overrun the stack. */
  static final int DEEPEST = 50;

  static final int LONGEST_NUMBER = 200;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST)
                  .maxNumberLength(LONGEST_NUMBER)
                  .build())
          .build();

  private final String file;
  private final String text;

  JsonText(String file, String text) {
    this.file = file;
    this.text = text;
  }

  /** The document, which must be an object. */
  ObjectNode parse() throws LeaseFileException {
    try (JsonParser parser = FACTORY.createParser(text)) {
      JsonNode tree = readTree(parser);
      if (tree instanceof ObjectNode object) {
        return object;
      }
      String found = tree == null ? "nothing but blanks" : Complaint.shown(tree);
      throw new LeaseFileException(
          new Problem(file, "", Optional.of(new TextPosition(1, 1)), found, "an object: { ... }"));
    } catch (LeaseFileException e) {
      throw e;
    } catch (IOException e) {
      throw new UncheckedIOException("Text in memory can always be read", e);
    }
  }

  private JsonNode readTree(JsonParser parser) throws IOException {
    try {
      return readWhole(parser);
    } catch (JsonProcessingException e) {
      throw new LeaseFileException(List.of(SyntaxWords.problem(file, e, parser)), e);
    }
  }

  private JsonNode readWhole(JsonParser parser) throws IOException {
    if (parser.nextToken() == null) {
      return null;
    }
    JsonNode tree = LeaseMapper.mapper().readTree(parser);
    JsonToken after = parser.nextToken();
    if (after != null) {
      throw new LeaseFileException(
          new Problem(
              file,
              "",
              Optional.of(position(parser.currentTokenLocation())),
              "\"" + parser.getText() + "\" after the end of the lease",
              "nothing after the last }"));
    }
    return tree;
  }

  Problem locate(Complaint complaint) {
    return new Problem(
        file,
        complaint.place(),
        positionOf(complaint.pointer()),
        complaint.found(),
        complaint.accepted());
  }

  /** Where a part of the document stands; for a missing part, where its owner stands. */
  private Optional<TextPosition> positionOf(JsonPointer pointer) {
    for (JsonPointer at = pointer; at != null; at = at.head()) {
      Optional<TextPosition> found = search(at);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private Optional<TextPosition> search(JsonPointer pointer) {
    try (JsonParser parser = FACTORY.createParser(text)) {
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        boolean value = token.isStructStart() || token.isScalarValue();
        if (value && parser.getParsingContext().pathAsPointer().equals(pointer)) {
          return Optional.of(position(parser.currentTokenLocation()));
        }
      }
      return Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException("Text that was read once can be read again", e);
    }
  }

  static TextPosition position(JsonLocation location) {
    return new TextPosition(location.getLineNr(), location.getColumnNr());
  }
}
