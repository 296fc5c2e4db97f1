package tankyard.engine.pipes;

import tankyard.engine.fluids.Drop;

/** What one run does at one flow. One friction factor serves both. */
record PipeAtFlow(Drop drop, FlowState state) {}
