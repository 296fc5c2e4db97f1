package tankyard.engine.lease;

import tankyard.engine.units.Elevation;

/** A ground height someone shot or read off a map. */
public record SpotHeight(MapPoint at, Elevation ground) {}
