package tankyard.engine.study;

import tankyard.engine.units.Pressure;
import tankyard.engine.working.Computed;

/**
 * What it takes to start a line again that stood full until it was as cold as the ground, below the
 * oil's pour point.
 *
 * @param gel pressure that makes the gel in this line yield
 * @param highest at the end the fluid comes from, with every line beyond it gelled as well, the
 *     separator's gauge at its reading and the difference in height added
 */
public record Restart(Computed<Pressure> gel, Computed<Pressure> highest) {}
