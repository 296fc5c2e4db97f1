package tankyard.engine.working;

import java.util.Objects;

/**
 * Where a law, a table or a check value comes from.
 *
 * @param kind how far it can be trusted
 * @param citation author, title, table or page; or what the practice is
 */
public record Source(Kind kind, String citation) {
  /** How a source is known. */
  public enum Kind {
    PUBLISHED("published"),
    DEFINITION("definition"),
    COMMON_PRACTICE("common practice, no source"),
    MEMORY("from memory"),
    INVENTED("invented for the demonstration"),
    LEASE("typed in this lease");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  public Source {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(citation, "citation");
  }

  public static Source published(String citation) {
    return new Source(Kind.PUBLISHED, citation);
  }

  public static Source definition(String citation) {
    return new Source(Kind.DEFINITION, citation);
  }

  public static Source commonPractice(String citation) {
    return new Source(Kind.COMMON_PRACTICE, citation);
  }

  public static Source memory(String citation) {
    return new Source(Kind.MEMORY, citation);
  }

  public static Source invented(String citation) {
    return new Source(Kind.INVENTED, citation);
  }

  public static Source lease(String citation) {
    return new Source(Kind.LEASE, citation);
  }

  /** For example {@code Colebrook 1939 (published)}. */
  public String line() {
    return citation + " (" + kind.words() + ")";
  }
}
