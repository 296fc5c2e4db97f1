package tankyard.engine.cli;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.Lease;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.report.doc.Results;

/** The lease file that a command works on, and how much of it. */
final class LeaseChoice {
  @Parameters(paramLabel = "FILE", description = "The lease file.")
  private String file;

  @Option(
      names = "--case",
      paramLabel = "ID",
      description =
          "Work out this design case only; may be given several times. Without it, all of them.")
  private final List<String> cases = new ArrayList<>();

  @Option(
      names = "--date",
      paramLabel = "DAY",
      converter = DayConverter.class,
      description =
          "The day to print and to price by, such as 2026-07-01. Without it, today. The same file"
              + " on the same day gives the same output.")
  private Optional<LocalDate> date = Optional.empty();

  Results results(Errand errand) throws IOException {
    return errand.results(withCases(read(file)), day(date));
  }

  Results resultsAndCures(Errand errand) throws IOException {
    return errand.resultsAndCures(withCases(read(file)), day(date));
  }

  static Lease read(String typed) throws IOException {
    Path path;
    try {
      path = Path.of(typed);
    } catch (InvalidPathException e) {
      throw UnusableException.because(typed, "what is no file name here", "a lease file", e);
    }
    return LeaseFiles.read(path);
  }

  static LocalDate day(Optional<LocalDate> typed) {
    return typed.orElseGet(LocalDate::now);
  }

  private Lease withCases(Lease lease) {
    List<String> known = lease.cases().stream().map(DesignCase::id).toList();
    for (String wanted : cases) {
      if (!known.contains(wanted)) {
        throw UnusableException.of(
            "--case",
            "\"" + wanted + "\", which is no design case of " + file,
            known.stream().collect(Collectors.joining(", ")));
      }
    }
    return cases.isEmpty()
        ? lease
        : lease.withCases(lease.cases().stream().filter(c -> cases.contains(c.id())).toList());
  }
}
