/**
 * Lease files: reading, checking, writing and saving them.
 *
 * <p>Start at {@link tankyard.engine.leasefile.LeaseFiles}.
 */
package tankyard.engine.leasefile;
