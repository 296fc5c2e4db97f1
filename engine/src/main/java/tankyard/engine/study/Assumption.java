package tankyard.engine.study;

import tankyard.engine.working.Source;

/**
 * A value nobody typed.
 *
 * @param thingId the thing it is about; empty where it is the whole lease
 * @param words for example "runs 24 h a day"
 */
public record Assumption(String thingId, String words, Source source) {}
