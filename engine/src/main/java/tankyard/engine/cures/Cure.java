package tankyard.engine.cures;

import java.util.function.UnaryOperator;
import tankyard.engine.lease.Lease;

/**
 * One change that may help.
 *
 * @param id what sort of change: {@code bigger-leg}
 * @param thingId what is changed
 * @param words what is done, as a person says it
 * @param care what the numbers do not say; may be empty
 * @param billing how much of what it costs the bill tells
 * @param edit the change itself
 */
record Cure(
    String id,
    String thingId,
    String words,
    String care,
    CureResult.Billing billing,
    UnaryOperator<Lease> edit) {}
