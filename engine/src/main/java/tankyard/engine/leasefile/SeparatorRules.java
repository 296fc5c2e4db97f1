package tankyard.engine.leasefile;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.engine.lease.Regulator;
import tankyard.engine.lease.Separator;
import tankyard.engine.units.AmountText;

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
            interfaceInShell(separator, place),
            range(separator.regulator(), place + "/regulator"))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<Complaint> interfaceInShell(Separator separator, String place) {
    boolean lying = separator.shape() == Separator.Shape.HORIZONTAL;
    double heads = lying ? 0 : separator.diameter().metres();
    double height = heads + (lying ? separator.diameter() : separator.length()).metres();
    return separator
        .bottomHeight()
        .filter(
            bottom -> {
              double level = separator.interfaceHeight().metres() - bottom.metres();
              return level < 0 || level > height;
            })
        .map(
            bottom ->
                new Complaint(
                    place + "/bottomHeight",
                    "a bottom at "
                        + AmountText.print(bottom.typed())
                        + " with the interface at "
                        + AmountText.print(separator.interfaceHeight().typed()),
                    "a shell that has its interface inside"));
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
