package tankyard.engine.study;

import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;

/**
 * What was worked out once for the whole lease, since it is the same in every case.
 *
 * @param berm against the largest tank inside it, if one is drawn
 * @param power what the motors ask of each pole
 * @param drives how the pumps come to their rates
 */
public record Yard(Optional<BermResult> berm, List<PoleLoad> power, List<PumpDrive> drives) {
  public Yard {
    power = List.copyOf(power);
    drives = List.copyOf(drives);
  }

  public static Yard of(Lease lease) {
    return new Yard(BermResult.of(lease), PoleLoads.of(lease), PumpDrive.of(lease));
  }

  /** With nothing in it. */
  public static Yard empty() {
    return new Yard(Optional.empty(), List.of(), List.of());
  }
}
