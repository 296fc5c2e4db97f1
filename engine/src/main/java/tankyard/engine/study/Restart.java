package tankyard.engine.study;

import tankyard.engine.units.Pressure;
import tankyard.engine.working.Computed;

/**
 * What it takes to start a line, or a well's lines, again after all stood full until they were as
 * cold as the ground, below the oil's pour point.
 *
 * @param gel pressure that makes the gel in this line yield; of a well, in the line it flows into
 * @param allGel the same of every line from here to the separator
 * @param highest at the end the fluid comes from: all of that with the separator's gauge at its
 *     reading and the difference in height
 */
public record Restart(Computed<Pressure> gel, Pressure allGel, Computed<Pressure> highest) {}
