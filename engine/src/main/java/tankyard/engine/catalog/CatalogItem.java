package tankyard.engine.catalog;

import tankyard.engine.working.Source;

/** One thing that can be bought, or one job that can be paid for. */
public sealed interface CatalogItem
    permits Pipe,
        Fitting,
        ValveType,
        RegulatorType,
        TankSize,
        SeparatorSize,
        GunBarrelSize,
        PumpType,
        FloatType,
        Sundry {

  /** Stable, lower case, unique over the whole catalogue: {@code pe4710-dr11-2}. */
  String id();

  String name();

  /** Where its figures come from. */
  Source source();

  /** Puts the items of one kind in order, small ones first. Means nothing across kinds. */
  double order();

  /** How far its figures can be trusted. */
  default Source.Kind provenance() {
    return source().kind();
  }
}
