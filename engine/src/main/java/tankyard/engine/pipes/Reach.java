package tankyard.engine.pipes;

import tankyard.engine.fluids.Drop;

/** Pipe between two stations, in the line's own direction. */
record Reach(ControlPoint from, ControlPoint to, double staticPascals, Drop friction) {}
