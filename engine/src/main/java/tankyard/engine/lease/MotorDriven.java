package tankyard.engine.lease;

import java.util.Optional;
import tankyard.engine.units.Current;
import tankyard.engine.units.Power;

/** What an electric motor drives. */
public sealed interface MotorDriven extends Thing permits Well, InjectionPump {

  /** Nameplate power; empty where it is not known or there is none. */
  Optional<Power> motor();

  /** Amps at full load on its nameplate. */
  Optional<Current> motorAmps();

  /** From the nearest power pole to its motor. */
  Optional<Wire> wire();
}
