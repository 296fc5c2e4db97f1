package tankyard.engine.study;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Time;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;

/**
 * What a gun barrel does in one case.
 *
 * @param oil rate into it
 * @param water rate into it
 * @param surge what its leg must pass
 * @param interfaceAtRest where the water stands with nothing running, at this case's temperature
 * @param leg what the leg does at the surge; empty where its pipe is not known
 * @param falls whether water and oil run to their tanks by themselves
 * @param oilStays empty where no oil comes
 * @param waterStays empty where no water comes
 * @param atBottom what the liquid inside weighs at the bottom
 * @param onWells what a well on the same ground feels, line loss left out
 */
@RecordBuilder
public record GunBarrelResult(
    String gunBarrelId,
    LiquidRate oil,
    LiquidRate water,
    Computed<LiquidRate> surge,
    GunBarrelCut cut,
    Computed<Length> interfaceAtRest,
    Optional<AtSurge> leg,
    List<GunBarrelFall> falls,
    Volume oilVolume,
    Volume waterVolume,
    Optional<Computed<Time>> oilStays,
    Optional<Computed<Time>> waterStays,
    Computed<Pressure> atBottom,
    Computed<Pressure> onWells)
    implements GunBarrelResultBuilder.With {
  public GunBarrelResult {
    falls = List.copyOf(falls);
  }

  /**
   * The leg at the surge.
   *
   * @param loss head lost up to the weir
   * @param interfaceHeight where that lifts the water to, and what backs up over the weir with it
   * @param most rate at which the water reaches the oil outlet
   * @param over what of the surge leaves with the oil
   * @param oilSpare height to spare on the oil leg when that runs down it too; empty where nothing
   *     goes over, or where there is no oil leg
   * @param downcomer what it swallows and still lets air back
   * @param sizes the pipe as drawn and the next ones up
   */
  @RecordBuilder
  public record AtSurge(
      Computed<Length> loss,
      Computed<Length> interfaceHeight,
      Computed<LiquidRate> most,
      LiquidRate over,
      Optional<Length> oilSpare,
      Computed<LiquidRate> downcomer,
      List<Size> sizes)
      implements GunBarrelResultAtSurgeBuilder.With {
    public AtSurge {
      sizes = List.copyOf(sizes);
    }
  }

  /**
   * One size of pipe, for leg, downcomer and the way to the tank.
   *
   * @param loss head lost in the leg
   * @param interfaceHeight where that lifts the water to
   * @param downcomer what it swallows and still lets air back
   * @param lineLoss head lost on the way to the tank; empty where no line leads there
   */
  public record Size(
      String pipeId,
      String name,
      Computed<Length> loss,
      Computed<Length> interfaceHeight,
      Computed<LiquidRate> downcomer,
      Optional<Computed<Length>> lineLoss) {}
}
