/**
 * The studio: starts, and wires every part by constructor.
 *
 * <p>Start at {@link tankyard.app.Launcher}, then {@link tankyard.app.Studio}, the only class that
 * knows every part. Features ({@code map}, {@code rack}, {@code sheet}, {@code findings}, ...)
 * never import each other: they meet in {@code edit} (the lease, what is picked, the view settings,
 * what is in hand) and {@code solve} (the results). {@code shell} gives the frame, {@code style}
 * the look.
 *
 * <p>Everything of the world outside (screen, files, clock, threads) is made in {@link
 * tankyard.app.App} and handed in, so that a test can put the whole window together without any.
 */
package tankyard.app;
