/**
 * The command {@code sum}, made from the list of quick sums.
 *
 * <p>Start at {@link tankyard.engine.quick.cli.SumCommand#commandLine}: it stands alone or is added
 * to another command as a subcommand. {@code sum} lists, {@code sum ID --help} says what a sum
 * takes, {@code --json} prints everything for a program. Exit code 2 and one line for bad input.
 *
 * <p>Uses picocli and Jackson; computes nothing. Used by {@code cli}.
 */
package tankyard.engine.quick.cli;
