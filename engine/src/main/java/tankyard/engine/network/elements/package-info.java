/**
 * What stands in a network beside plain pipe: valves, pumps, a regulator, an injection well.
 *
 * <p>Each is a {@link tankyard.engine.network.Link} from its start to its end. {@link
 * tankyard.engine.network.elements.Loss} is anything with a flow law, the wide-open dump valve
 * among them; {@link tankyard.engine.network.elements.CheckValve} lets nothing back; {@link
 * tankyard.engine.network.elements.Pump} adds pressure by a curve or with a constant power; {@link
 * tankyard.engine.network.elements.Regulator} holds what stands ahead of it; {@link
 * tankyard.engine.network.elements.InjectionWell} asks for more the more goes in. Slopes are exact.
 *
 * <p>SI: m3/s, gauge Pa; positive from start to end. What is shut tight (a check valve against the
 * flow, a regulator below its setting) is taken to leak: see {@link
 * tankyard.engine.network.elements.Leak}. That keeps one answer where many would do and is less
 * than anybody measures.
 *
 * <p>Immutable, no files, no clock. May use {@code network}, {@code valves}, {@code wells}, {@code
 * fluids}. Checked in {@code LinkContractTest} (monotone, no jumps, slopes that match a difference
 * quotient) and, the pump, in {@code LoopCheckedTest} against a published network.
 */
package tankyard.engine.network.elements;
