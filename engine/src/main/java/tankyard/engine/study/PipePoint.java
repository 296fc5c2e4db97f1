package tankyard.engine.study;

import java.util.Optional;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;

/**
 * One point along a line, as the profile shows it.
 *
 * @param distance along the pipe from its start
 * @param ground elevation of the ground above or below it
 * @param pipe elevation of the pipe
 * @param pressure of the liquid there; zero where the line runs part full
 * @param gas where gas comes with the liquid
 */
public record PipePoint(
    Length distance,
    Elevation ground,
    Elevation pipe,
    Pressure pressure,
    boolean partFull,
    Optional<Gas> gas) {

  /**
   * How gas and liquid share the pipe at a point.
   *
   * @param holdUp part of the pipe that liquid fills
   * @param gasPart gas's part of the flow by volume
   */
  public record Gas(Fraction holdUp, Fraction gasPart, String pattern) {}
}
