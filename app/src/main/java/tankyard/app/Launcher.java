package tankyard.app;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.application.Application;
import tankyard.engine.cli.Cli;
import tankyard.engine.leasefile.LeaseFiles;

/**
 * Starts the program: the studio where there is a screen; the command line where something is to be
 * done without one, or where none is there.
 *
 * <p>It does not extend {@link Application}: such a class can't be started from the class path.
 */
public final class Launcher {
  private final UnaryOperator<String> environment;
  private final UnaryOperator<String> properties;
  private final Consumer<String[]> window;
  private final PrintStream out;
  private final PrintStream err;

  /**
   * A launcher for one machine.
   *
   * @param environment gives a variable of the environment, or null
   * @param properties gives a property of this Java, or null
   * @param window opens the studio and comes back when it is closed
   */
  Launcher(
      UnaryOperator<String> environment,
      UnaryOperator<String> properties,
      Consumer<String[]> window,
      PrintStream out,
      PrintStream err) {
    this.environment = environment;
    this.properties = properties;
    this.window = window;
    this.out = out;
    this.err = err;
  }

  public static void main(String[] args) {
    Launcher launcher =
        new Launcher(
            System::getenv,
            System::getProperty,
            Launcher::open,
            new PrintStream(System.out, true, StandardCharsets.UTF_8),
            new PrintStream(System.err, true, StandardCharsets.UTF_8));
    System.exit(launcher.run(args));
  }

  private static void open(String[] args) {
    Opening.begin();
    Application.launch(App.class, args);
  }

  /** Does what was asked for and gives the exit code. */
  int run(String[] args) {
    boolean oneFile = args.length == 1 && args[0].endsWith(LeaseFiles.EXTENSION);
    if (args.length > 0 && !oneFile) {
      return inTerminal(args);
    }
    Optional<String> missing = missingScreen();
    if (missing.isPresent()) {
      return withoutWindow(missing.get(), args);
    }
    try {
      window.accept(args);
      return 0;
    } catch (UnsupportedOperationException | UnsatisfiedLinkError e) {
      return withoutWindow(String.valueOf(e.getMessage()), args);
    }
  }

  /**
   * On Linux without either variable no window can come, and asking for one prints a long trace.
   */
  private Optional<String> missingScreen() {
    boolean linux = String.valueOf(properties.apply("os.name")).startsWith("Linux");
    boolean told = properties.apply("glass.platform") != null;
    boolean screen =
        environment.apply("DISPLAY") != null || environment.apply("WAYLAND_DISPLAY") != null;
    return linux && !told && !screen
        ? Optional.of("neither DISPLAY nor WAYLAND_DISPLAY is set")
        : Optional.empty();
  }

  private int withoutWindow(String why, String[] args) {
    String what = args.length == 0 ? "the demo lease" : args[0];
    out.println(
        "No window can be opened ("
            + why.lines().findFirst().orElse("no reason given")
            + "): working "
            + what
            + " out in the terminal.");
    return args.length == 0
        ? inTerminal(new String[] {"demo"})
        : inTerminal(new String[] {"size", args[0]});
  }

  /** Pictures are drawn there too, and must not ask a screen that may not be there. */
  private int inTerminal(String[] args) {
    System.setProperty("java.awt.headless", "true");
    return Cli.run(args, out, err);
  }
}
