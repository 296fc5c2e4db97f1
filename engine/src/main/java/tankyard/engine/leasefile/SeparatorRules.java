package tankyard.engine.leasefile;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.engine.lease.Regulator;
import tankyard.engine.lease.Separator;

/** Heights and ranges of one separator that contradict each other. */
final class SeparatorRules {
  private SeparatorRules() {}

  static List<Complaint> complaints(Separator separator, String place) {
    return Stream.of(
            SenseRules.above(
                place + "/waterOutletHeight",
                "a water outlet at ",
                separator.waterOutletHeight(),
                "the interface, ",
                separator.interfaceHeight()),
            SenseRules.above(
                place + "/interfaceHeight",
                "an interface at ",
                separator.interfaceHeight(),
                "the oil outlet, ",
                separator.oilOutletHeight()),
            range(separator.regulator(), place + "/regulator"))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<Complaint> range(Regulator regulator, String place) {
    return regulator
        .rangeLow()
        .flatMap(
            low ->
                regulator
                    .rangeHigh()
                    .flatMap(
                        high ->
                            SenseRules.notBelow(
                                place + "/rangeLow",
                                "a lowest setting of ",
                                low,
                                "the highest, ",
                                high)));
  }
}
