package tankyard.engine.takeoff;

import tankyard.engine.lease.Line;

/** How much pipe each line takes. */
@FunctionalInterface
public interface GroundLengths {
  /** Metres of pipe along the trench, slack included. */
  double metres(Line line);
}
