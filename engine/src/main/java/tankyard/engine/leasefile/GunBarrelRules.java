package tankyard.engine.leasefile;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.units.Length;

/** Heights of one gun barrel that contradict each other. */
final class GunBarrelRules {
  private GunBarrelRules() {}

  static List<Complaint> complaints(GunBarrel barrel, String place) {
    return Stream.of(
            SenseRules.notBelow(
                place + "/interfaceHeight",
                "an interface at ",
                barrel.interfaceHeight(),
                "the oil outlet, ",
                barrel.oilOutletHeight()),
            inShell(
                barrel,
                place + "/oilOutletHeight",
                "an oil outlet at ",
                Optional.of(barrel.oilOutletHeight())),
            inShell(barrel, place + "/weirHeight", "a weir at ", barrel.weirHeight()))
        .flatMap(Optional::stream)
        .toList();
  }

  /** A weir above the shell would drown the vessel before it ran over. */
  private static Optional<Complaint> inShell(
      GunBarrel barrel, String place, String what, Optional<Length> height) {
    return height.flatMap(
        h -> SenseRules.above(place, what, h, "the shell height, ", barrel.shellHeight()));
  }
}
