package tankyard.engine.quick.sums;

import java.util.List;
import java.util.Optional;
import tankyard.engine.quick.QuickSum;

/** The one list of quick sums, in the order they are shown. */
public final class AllSums {
  private static final List<QuickSum> ALL =
      List.of(
          new PipeLossSum(),
          new FittingsSum(),
          new ValveLossSum(),
          new HazenWilliamsSum(),
          new RunningRateSum(),
          new ApiGravitySum(),
          new VesselVolumeSum(),
          new RetentionSum(),
          new FloatPullSum(),
          new GunBarrelSum(),
          new HeaterTreaterSum(),
          new BarrelsPerFootSum(),
          new OverflowSum(),
          new BermSum(),
          new PumpPowerSum(),
          new PlungerPumpSum(),
          new VoltageDropSum(),
          new InjectionLimitSum());

  private AllSums() {}

  public static List<QuickSum> list() {
    return ALL;
  }

  public static Optional<QuickSum> find(String id) {
    return ALL.stream().filter(s -> s.id().equals(id)).findFirst();
  }
}
