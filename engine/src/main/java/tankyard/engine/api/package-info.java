/**
 * The one door to the engine.
 *
 * <p>Start at {@link tankyard.engine.api.Tankyard}: give it a lease, get a {@link
 * tankyard.engine.api.LeaseAnswer} with cases, windows, findings and bill. The studio and the
 * command line come in here; beside it they read {@code lease}, {@code units} and the result
 * records.
 *
 * <p>No files, no clock (the day is handed in), no threads of its own; {@link
 * tankyard.engine.api.Cancel} stops it between two steps.
 */
package tankyard.engine.api;
