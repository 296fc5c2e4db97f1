package tankyard.engine.cli;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import tankyard.engine.quick.cli.SumCommand;

/** The command line as a function. */
public final class Cli {
  /** A stop or a fix was found. */
  static final int FINDING = 1;

  /** The input or the usage could not be used. */
  static final int UNUSABLE = 2;

  private Cli() {}

  /**
   * Does what was typed.
   *
   * @return the exit code
   */
  public static int run(String[] args, PrintStream out, PrintStream err) {
    PrintWriter words = utf8(out);
    PrintWriter complaints = utf8(err);
    int code = commandLine(new Errand(words)).setOut(words).setErr(complaints).execute(args);
    words.flush();
    complaints.flush();
    return code;
  }

  static CommandLine commandLine(Errand errand) {
    CommandLine all =
        new CommandLine(new TankyardCommand())
            .addSubcommand(new SizeCommand(errand))
            .addSubcommand(new CheckCommand(errand))
            .addSubcommand(new BillCommand(errand))
            .addSubcommand(new PageCommand(errand))
            .addSubcommand(new DemoCommand(errand));
    OneLineErrors errors = new OneLineErrors();
    all.setParameterExceptionHandler(errors).setExecutionExceptionHandler(errors);
    // Added last, since it words its own errors.
    return all.addSubcommand("sum", SumCommand.commandLine()).setUsageHelpWidth(100);
  }

  private static PrintWriter utf8(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8));
  }
}
