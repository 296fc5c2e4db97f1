package tankyard.app.solve;

import tankyard.engine.api.LeaseAnswer;

/**
 * An answer with the revision of the store it belongs to.
 *
 * @param millis how long the working-out took
 */
public record Solved(long revision, LeaseAnswer answer, long millis) {}
