/**
 * Whole leases that were worked by hand, held against what the engine makes of their files under
 * docs/examples; and the same leases with one thing changed, where the hand can say by how much the
 * answer must move.
 */
package tankyard.engine.designs;
