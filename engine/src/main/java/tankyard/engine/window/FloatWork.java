package tankyard.engine.window;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Force;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Mass;
import tankyard.engine.units.Pressure;
import tankyard.engine.working.Computed;

/**
 * What the float of a dump valve can do, in the case in which it can do least.
 *
 * @param halfway what the ball should weigh, to pull as hard up in the brine as down in the oil
 * @param opens pull at the seat as it rises in the brine
 * @param closes pull at the seat as it sinks in the oil
 * @param legFull most gauge reading it works at with the water leg full behind the valve
 * @param legDrained the same with nothing behind it, as at the first start
 * @param fresher with the fresher water that may come, in the case in which it can do least then;
 *     empty where today's is no heavier
 */
@RecordBuilder
public record FloatWork(
    String caseId,
    Computed<Mass> halfway,
    Computed<Force> opens,
    Computed<Force> closes,
    Computed<Pressure> legFull,
    Computed<Pressure> legDrained,
    Optional<Fresher> fresher)
    implements FloatWorkBuilder.With {

  /**
   * The same ball in fresher water, the leg full of today's.
   *
   * @param water its gravity at 60 degF
   * @param halfway what the ball should weigh then
   * @param opens pull at the seat; nothing, or less, where the ball no longer rises
   * @param legFull most gauge reading it works at
   */
  public record Fresher(
      Gravity water, Computed<Mass> halfway, Computed<Force> opens, Computed<Pressure> legFull) {}
}
