package tankyard.engine.leasefile;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.engine.lease.Tank;
import tankyard.engine.units.Length;

/** Heights of one tank that contradict each other. */
final class TankRules {
  private final Tank tank;
  private final String place;

  private TankRules(Tank tank, String place) {
    this.tank = tank;
    this.place = place;
  }

  static List<Complaint> complaints(Tank tank, String place) {
    TankRules rules = new TankRules(tank, place);
    return Stream.of(
            rules.inShell("overflowHeight", Optional.of(tank.overflowHeight())),
            rules.bottomEntry(),
            rules.inShell("outletHeight", tank.outletHeight()),
            rules.inShell("switchHeight", tank.switchHeight()),
            rules.inShell("pumpOn", tank.pumpOn()),
            rules.inShell("pumpOff", tank.pumpOff()),
            rules.pumpStopsBelowItsStart())
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<Complaint> inShell(String field, Optional<Length> height) {
    return height.flatMap(
        h ->
            SenseRules.above(place + "/" + field, "", h, "the shell height, ", tank.shellHeight()));
  }

  /** A line over the top stands above the shell; one that enters low can't. */
  private Optional<Complaint> bottomEntry() {
    return tank.entry() == Tank.Entry.BOTTOM
        ? inShell("inletHeight", Optional.of(tank.inletHeight()))
        : Optional.empty();
  }

  private Optional<Complaint> pumpStopsBelowItsStart() {
    return tank.pumpOff()
        .flatMap(
            off ->
                tank.pumpOn()
                    .flatMap(
                        on ->
                            SenseRules.notBelow(
                                place + "/pumpOff", "a pump-off level of ", off, "pump-on, ", on)));
  }
}
