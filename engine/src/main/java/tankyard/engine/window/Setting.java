package tankyard.engine.window;

import tankyard.engine.units.Pressure;
import tankyard.engine.working.Computed;

/**
 * The regulator setting and what its gauge then reads.
 *
 * @param regulator pressure to screw it to
 * @param gauge what the gauge reads at no oil flow
 * @param gaugeAtFlow what it reads with the regulator built up at full flow
 * @param typed whether the owner typed it; otherwise it is recommended
 * @param fits whether it lies in the window with its build-up
 */
public record Setting(
    Computed<Pressure> regulator,
    Pressure gauge,
    Pressure gaugeAtFlow,
    boolean typed,
    boolean fits) {}
