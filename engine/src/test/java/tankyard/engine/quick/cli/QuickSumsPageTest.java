package tankyard.engine.quick.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.sums.AllSums;

class QuickSumsPageTest {
  private static final Path PAGE = Path.of("..", "docs", "quick-sums.md");
  private static final String HEAD =
      """
      # Quick sums

      Single calculations without a lease. `sum` lists them, `sum ID --help` says what each takes,
      `--json` prints everything for a program. A number without a unit is taken in the unit shown;
      any other unit of its kind can be typed: `"2000 ft"`, `"0.3 mi"`, `"5 ft 6 in"`, `"36 API"`.
      What is not typed is assumed and shown as such. Bad input is one line that names it, and exit
      code 2.

      This page is written by `QuickSumsPageTest`, which fails when it is out of date; to write it
      anew: `mvn -pl engine test -Dtest=QuickSumsPageTest -Dverification.write=true`.
      """;

  @Test
  void the_page_shows_the_sums_as_they_are() throws IOException {
    StringBuilder page = new StringBuilder(HEAD);
    AllSums.list().forEach(sum -> section(page, sum));
    if (Boolean.getBoolean("verification.write")) {
      Files.writeString(PAGE, page.toString());
    }
    assertThat(Files.readString(PAGE))
        .as("docs/quick-sums.md is out of date; its head says how to write it anew")
        .isEqualTo(page.toString());
  }

  private static void section(StringBuilder page, QuickSum sum) {
    page.append("\n## ").append(sum.id()).append(": ").append(sum.title()).append("\n\n");
    page.append(sum.about()).append("\n\n");
    page.append("| input | what it is | bare number in | not typed |\n|---|---|---|---|\n");
    for (QuickInput input : sum.inputs()) {
      page.append(
          "| `--%s` | %s | %s | %s |\n"
              .formatted(input.id(), what(input), bare(input), notTyped(input)));
    }
    page.append("\n```\n$ sum ").append(commandLine(sum)).append('\n');
    page.append(output(sum)).append("```\n");
  }

  private static String what(QuickInput input) {
    return input.choices().isEmpty()
        ? input.title()
        : input.title() + ": " + String.join(", ", input.choices());
  }

  private static String bare(QuickInput input) {
    return input.bare().map(u -> u.symbol().isEmpty() ? "-" : u.symbol()).orElse("-");
  }

  private static String notTyped(QuickInput input) {
    if (input.usual().isPresent()) {
      return input.usual().orElseThrow() + " (" + input.why() + ")";
    }
    return input.needed() ? "is asked for" : "is left out";
  }

  private static List<String> arguments(QuickSum sum) {
    List<String> arguments = new ArrayList<>(List.of(sum.id()));
    for (QuickInput input : sum.inputs()) {
      // Of the two heights of a gun barrel one must be typed.
      if (input.needed() || (sum.id().equals("gun-barrel") && input.id().equals("interface"))) {
        arguments.add("--" + input.id());
        arguments.add(input.example());
      }
    }
    return arguments;
  }

  private static String commandLine(QuickSum sum) {
    return String.join(
        " ", arguments(sum).stream().map(a -> a.contains(" ") ? '"' + a + '"' : a).toList());
  }

  private static String output(QuickSum sum) {
    StringWriter out = new StringWriter();
    int code =
        SumCommand.commandLine()
            .setOut(new PrintWriter(out, true))
            .execute(arguments(sum).toArray(String[]::new));
    assertThat(code).isZero();
    return out.toString();
  }
}
