package tankyard.engine.study;

import java.util.List;
import tankyard.engine.lease.Lease;

/**
 * What was worked out once for the whole lease, since it is the same in every case.
 *
 * @param berms each against the largest tank inside it
 * @param setbacks from each landmark to the nearest tank or vessel
 * @param power what the motors ask of each pole
 * @param drives how the pumps come to their rates
 */
public record Yard(
    List<BermResult> berms, List<Setback> setbacks, List<PoleLoad> power, List<PumpDrive> drives) {
  public Yard {
    berms = List.copyOf(berms);
    setbacks = List.copyOf(setbacks);
    power = List.copyOf(power);
    drives = List.copyOf(drives);
  }

  public static Yard of(Lease lease) {
    return new Yard(
        BermResult.of(lease), Setback.of(lease), PoleLoads.of(lease), PumpDrive.of(lease));
  }

  /** With nothing in it. */
  public static Yard empty() {
    return new Yard(List.of(), List.of(), List.of(), List.of());
  }
}
