package tankyard.engine.lease;

import tankyard.engine.units.Length;

/**
 * Where the wells' fluid is parted: a separator under pressure, or a gun barrel open to the air.
 */
public sealed interface Vessel extends Thing permits Separator, GunBarrel {

  /** Where the flow line enters, above its ground. */
  Length inletHeight();
}
