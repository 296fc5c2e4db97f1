package tankyard.engine.study;

import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Wire;
import tankyard.engine.units.Current;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.Power;
import tankyard.engine.working.Computed;

/**
 * What the motors of a lease ask of one power pole.
 *
 * @param motors nearest to it
 * @param running amps with every motor at full load
 * @param together amps as all of them start at once, as after a power cut without delays
 * @param staggered amps as the largest starts while the others run
 */
public record PoleLoad(
    String poleId,
    List<Motor> motors,
    Computed<Current> running,
    Computed<Current> together,
    Computed<Current> staggered) {
  public PoleLoad {
    motors = List.copyOf(motors);
  }

  /**
   * One motor.
   *
   * @param thingId the well or pump it drives
   * @param power on its nameplate
   * @param lost in its wire, where the wire is typed
   */
  public record Motor(
      String thingId,
      Power power,
      Computed<Current> running,
      Computed<Current> starting,
      Optional<Lost> lost) {}

  /**
   * What a wire takes of the voltage.
   *
   * @param length of the run, one way
   * @param enough the thinnest gauge of its metal that loses no more than is usual; empty where
   *     none does
   */
  public record Lost(
      Wire wire,
      Length length,
      Computed<Fraction> running,
      Computed<Fraction> starting,
      Optional<Wire.Gauge> enough) {}
}
