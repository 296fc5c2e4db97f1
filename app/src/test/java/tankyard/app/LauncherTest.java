package tankyard.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

class LauncherTest {
  private static final String DEMO = "docs/examples/p2-sandstone-knob.lease.json";
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private final List<String> opened = new ArrayList<>();

  private int run(Map<String, String> environment, Consumer<String[]> window, String... args) {
    return new Launcher(
            environment::get,
            Map.of("os.name", "Linux")::get,
            window,
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8))
        .run(args);
  }

  private String printed() {
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void with_a_screen_the_window_opens_and_nothing_is_printed() {
    int code = run(Map.of("DISPLAY", ":0"), args -> opened.add("window " + args.length));
    assertThat(code).isZero();
    assertThat(opened).containsExactly("window 0");
    assertThat(printed()).isEmpty();
  }

  @Test
  void without_a_screen_one_line_says_so_and_the_sheet_follows() {
    int code = run(Map.of(), args -> opened.add("window"), "../" + DEMO);
    assertThat(opened).isEmpty();
    assertThat(printed().lines().findFirst().orElseThrow())
        .startsWith("No window can be opened (neither DISPLAY nor WAYLAND_DISPLAY is set)")
        .endsWith("working ../" + DEMO + " out in the terminal.");
    assertThat(printed()).contains("Sandstone Knob");
    assertThat(code).isIn(0, 1);
  }

  @Test
  void a_screen_that_does_not_open_counts_as_none() {
    run(
        Map.of("DISPLAY", ":99"),
        args -> {
          throw new UnsupportedOperationException("Unable to open DISPLAY\nand more");
        },
        "../" + DEMO);
    assertThat(printed()).startsWith("No window can be opened (Unable to open DISPLAY): working");
    assertThat(printed()).contains("Sandstone Knob");
  }

  @Test
  void words_go_to_the_command_line() {
    int code = run(Map.of("DISPLAY", ":0"), args -> opened.add("window"), "no-such-thing");
    assertThat(code).isEqualTo(2);
    assertThat(opened).isEmpty();
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("no-such-thing");
  }
}
