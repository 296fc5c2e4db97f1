/**
 * The command line: sizes a lease file, checks one, prices one, does quick sums, shows the demo.
 *
 * <p>Start at {@link tankyard.engine.cli.Cli#run}, which takes what was typed and two streams and
 * gives the exit code; nothing in here ends the program but {@link tankyard.engine.cli.Main}. Each
 * command is a class named after it. The words of options and errors are parsed and printed by the
 * picocli library.
 *
 * <p>Exit codes: 0, nothing worse than <em>look</em> was found; 1, a <em>stop</em> or <em>fix</em>
 * was; 2, the input or the usage could not be used. In that case one line on the error stream says
 * where, what was found and what is accepted, and nothing else is printed. Text is UTF-8.
 *
 * <p>Works nothing out: {@code api} does, and {@code report} writes. The day's date comes from the
 * clock here and nowhere below, or from {@code --date}.
 */
package tankyard.engine.cli;
