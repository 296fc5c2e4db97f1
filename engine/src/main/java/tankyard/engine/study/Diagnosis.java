package tankyard.engine.study;

/**
 * Why something can't be worked out, so that a person can mend it: "Tee 4 has no way to a
 * separator".
 *
 * @param thingId the thing or line it is about; empty where it is the whole lease
 */
public record Diagnosis(String id, String thingId, String words) {}
