package tankyard.engine.catalog.csv;

/** A catalogue file that can't be read; the message names file, line and what is accepted. */
public final class CatalogFormatException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  CatalogFormatException(String file, long line, String words) {
    super(file + ", line " + line + ": " + words);
  }

  CatalogFormatException(String file, String words, Throwable cause) {
    super(file + ": " + words, cause);
  }
}
