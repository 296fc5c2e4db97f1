package tankyard.engine.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** What came of typing a command line. */
record Typed(int code, String out, String err) {
  static final Path EXAMPLES = Path.of("../docs/examples");

  static Typed run(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code = Cli.run(args, print(out), print(err));
    return new Typed(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  private static PrintStream print(ByteArrayOutputStream to) {
    return new PrintStream(to, true, StandardCharsets.UTF_8);
  }

  static String example(String name) {
    return EXAMPLES.resolve(name + ".lease.json").toString();
  }

  static List<String> examples() throws java.io.IOException {
    try (Stream<Path> files = Files.list(EXAMPLES)) {
      return files.map(Path::toString).filter(f -> f.endsWith(".lease.json")).sorted().toList();
    }
  }
}
