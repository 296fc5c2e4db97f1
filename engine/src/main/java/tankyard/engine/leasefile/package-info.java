/**
 * Lease files: reading, checking, writing and saving them.
 *
 * <p>Start at {@link tankyard.engine.leasefile.LeaseFiles}, the one door. {@code LeaseReader} lists
 * the checks in order: text ({@code Utf8}), JSON ({@code JsonText}), version ({@code
 * LeaseVersions}), form ({@code LeaseSchema}), values ({@code ValueCheck} with the table of {@code
 * Limits}), sense ({@code SenseRules}, {@code FlowDirection}). A check returns {@code Complaint}s;
 * where they stand in the text is looked up only when there are some, and they become {@link
 * tankyard.engine.leasefile.Problem}s, of which the first is the one line a person sees.
 *
 * <p>{@code LeaseMapper} tells Jackson what it must know about the lease's records, which know
 * nothing of Jackson. {@code RecordShape} reads the fields off the records, so that a new field is
 * checked, kept and listed by itself. {@code LeasePrinter} lays the text out; {@code UnknownFields}
 * keeps what this version does not know; {@code AtomicSave} replaces a file in one step.
 *
 * <p>Quantities are kept in the unit they were typed in. The limits are against slips of the
 * keyboard, set by judgement and without a source; whether a design is any good is for {@code
 * checks} to say.
 *
 * <p>Thread-safe; touches no file but the one named, its copy aside and its own half-written
 * leftovers. Checked in {@code RoundTripTest} (random leases), {@code BrokenFilesTest} (damage of
 * many kinds), {@code KilledSaveTest} (a program killed while it saves) and {@code LeaseSchemaTest}
 * (schema, records and limits agree). The format is told in docs/lease-file.md.
 */
package tankyard.engine.leasefile;
