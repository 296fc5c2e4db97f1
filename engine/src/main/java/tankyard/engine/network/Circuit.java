package tankyard.engine.network;

/**
 * A network, or a part of one, in bare numbers.
 *
 * @param inflow m3/s from outside into each joint
 * @param heldPa gauge pressure of each joint that is held; not read elsewhere
 * @param link one for each run
 */
record Circuit(Topology topology, double[] inflow, double[] heldPa, Link[] link) {}
