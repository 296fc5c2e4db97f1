package tankyard.app.working;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** A working as plain text, with the workings of its inputs indented below. */
final class WorkingText {
  private static final String INDENT = "    ";

  private WorkingText() {}

  static String of(Working working) {
    return lines(working).collect(Collectors.joining("\n", "", "\n"));
  }

  private static Stream<String> lines(Working working) {
    Stream<String> own =
        Stream.of(
                Stream.of(working.title(), working.line()),
                working.terms().stream().map(Term::line).map(line -> "  " + line),
                Stream.of("Source: " + working.source().line()))
            .flatMap(s -> s);
    Stream<String> below =
        working.from().stream()
            .flatMap(w -> Stream.concat(Stream.of(""), lines(w)))
            .map(line -> line.isEmpty() ? line : INDENT + line);
    return Stream.concat(own, below);
  }
}
