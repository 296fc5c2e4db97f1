package tankyard.engine.study;

import java.util.List;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.working.Computed;

/**
 * How high a gun barrel's weir stands and how touchy that is. It is cut once, so it goes by the
 * gravities as typed and is the same in every case.
 *
 * @param weir height that puts the interface where it is wanted, the leg at rest
 * @param cut the same down to a quarter inch, as it is cut; what a nipple adds comes on top
 * @param interfaceAtCut where the interface stands then
 * @param stands the weir as typed, or the one for the interface wanted: all else goes by it
 * @param interfaceHeight where the interface stands then
 * @param interfaceForAnInch how far an inch of weir moves it
 * @param drifts what other liquids do to it
 * @param nippleNeeded how far the weir must be set up or down for the worst of them
 */
public record GunBarrelCut(
    Computed<Length> weir,
    Computed<Length> cut,
    Computed<Length> interfaceAtCut,
    Computed<Length> stands,
    Computed<Length> interfaceHeight,
    Computed<Length> interfaceForAnInch,
    List<Drift> drifts,
    Computed<Length> nippleNeeded) {
  public GunBarrelCut {
    drifts = List.copyOf(drifts);
  }

  /**
   * The same leg with other liquids.
   *
   * @param liquids what differs, in words: "water of 1.03 SG"
   * @param interfaceHeight where the interface goes if the weir is left as it is
   * @param weir that would put it back where it is wanted
   */
  public record Drift(
      String liquids,
      Gravity oil,
      Gravity water,
      Computed<Length> interfaceHeight,
      Computed<Length> weir) {}
}
