/**
 * What a separator or gun barrel holds, for how long, and where its layers stand.
 *
 * <p>Start at {@link tankyard.engine.vessels.Vessel}: {@link tankyard.engine.vessels.LyingVessel}
 * and {@link tankyard.engine.vessels.StandingVessel} with a {@link tankyard.engine.vessels.Head}
 * give volumes below a height and the height for a volume. {@link
 * tankyard.engine.vessels.Retention} turns a layer and a rate into minutes and holds the published
 * guide; {@link tankyard.engine.vessels.GunBarrelLeg} cuts the water leg; {@link
 * tankyard.engine.vessels.Settling} says how fast drops sink or rise.
 *
 * <p>Heights are above the vessel's lowest inside point. Flat, 2:1, hemispherical, ellipsoidal and
 * conical heads by Jones' formulas; torispherical heads by integration over crown and knuckle. Both
 * heads of a vessel are alike; wall thickness is ignored.
 *
 * <p>Left out: gas capacity, foam, weirs and buckets inside, tilted vessels. Immutable,
 * thread-safe. Checked in {@code VesselsCheckedTest}.
 */
package tankyard.engine.vessels;
