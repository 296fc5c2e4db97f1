package tankyard.engine.catalog.csv;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import tankyard.engine.catalog.NominalSize;
import tankyard.engine.units.Amount;
import tankyard.engine.units.AmountFormatException;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** One line of a catalogue file. An empty cell is a missing value. */
final class Row {
  private final String file;
  private final long line;
  private final Map<String, String> cells;
  private final Sources sources;

  Row(String file, long line, Map<String, String> cells, Sources sources) {
    this.file = file;
    this.line = line;
    this.cells = cells;
    this.sources = sources;
  }

  CatalogFormatException wrong(String words) {
    return new CatalogFormatException(file, line, words);
  }

  /** Makes an item, naming this line when its own checks refuse it. */
  <T> T make(Function<Row, T> maker) {
    try {
      return maker.apply(this);
    } catch (IllegalArgumentException e) {
      throw wrong(e.getMessage());
    }
  }

  String text(String column) {
    return optionalText(column)
        .orElseThrow(() -> wrong("\"" + column + "\" is empty or there is no such column."));
  }

  Optional<String> optionalText(String column) {
    return Optional.ofNullable(cells.get(column)).map(String::strip).filter(t -> !t.isEmpty());
  }

  /** The id, which must be fit to be typed and to stand in a file. */
  String id() {
    String id = text("id");
    if (!id.matches("[a-z0-9][a-z0-9.-]*")) {
      throw wrong("\"" + id + "\" can't be an id; use small letters, digits, points and dashes.");
    }
    return id;
  }

  double number(String column) {
    return amount(column, Unit.ONE).value();
  }

  /** A quantity; {@code bare} is the unit of a number without one. */
  Amount amount(String column, Unit bare) {
    return parse(column, text(column), bare);
  }

  Optional<Amount> optionalAmount(String column, Unit bare) {
    return optionalText(column).map(t -> parse(column, t, bare));
  }

  Optional<NominalSize> optionalNominal(String column) {
    return optionalAmount(column, Unit.INCH).map(a -> NominalSize.ofInches(a.in(Unit.INCH)));
  }

  NominalSize nominal(String column) {
    return NominalSize.ofInches(amount(column, Unit.INCH).in(Unit.INCH));
  }

  private Amount parse(String column, String typed, Unit bare) {
    Dimension dimension = bare.dimension();
    try {
      return AmountText.parse(typed, dimension, bare);
    } catch (AmountFormatException e) {
      throw wrong("\"" + column + "\": " + e.getMessage());
    }
  }

  <E extends Enum<E>> E word(String column, Class<E> kind) {
    String typed = text(column);
    for (E constant : kind.getEnumConstants()) {
      if (written(constant).equals(typed)) {
        return constant;
      }
    }
    String accepted =
        Arrays.stream(kind.getEnumConstants()).map(Row::written).collect(Collectors.joining(", "));
    throw wrong("\"" + column + "\" is \"" + typed + "\"; it must be one of " + accepted + ".");
  }

  <E extends Enum<E>> Optional<E> optionalWord(String column, Class<E> kind) {
    return optionalText(column).map(t -> word(column, kind));
  }

  private static String written(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Where the row's figures come from: the columns {@code source} and {@code provenance}. */
  Source source() {
    return source("source", "provenance");
  }

  Source source(String keyColumn, String provenanceColumn) {
    String key = text(keyColumn);
    String citation =
        sources
            .citation(key)
            .orElseThrow(() -> wrong("The source \"" + key + "\" is not in sources.csv."));
    return switch (text(provenanceColumn)) {
      case "read" -> Source.published(citation);
      case "memory" -> Source.memory(citation);
      case "practice" -> Source.commonPractice(citation);
      case "invented" -> Source.invented(citation);
      default ->
          throw wrong(
              "\""
                  + provenanceColumn
                  + "\" is \""
                  + text(provenanceColumn)
                  + "\"; it must be one of read, memory, practice, invented.");
    };
  }
}
