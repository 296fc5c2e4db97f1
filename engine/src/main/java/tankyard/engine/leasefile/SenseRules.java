package tankyard.engine.leasefile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.LeaseRules;
import tankyard.engine.lease.OwnPipe;
import tankyard.engine.lease.Quote;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.Quantity;

/**
 * What can't be, although each value alone could: a pump that stops above the level at which it
 * starts, a line to nowhere. What merely works badly is for the checks to say.
 */
final class SenseRules {
  private final List<Complaint> complaints = new ArrayList<>();

  private SenseRules() {}

  static List<Complaint> complaints(Lease lease) {
    SenseRules rules = new SenseRules();
    LeaseRules.broken(lease).forEach(rules::broken);
    rules.onlyOnce("/ownPipes/", lease.ownPipes().stream().map(OwnPipe::id).toList());
    rules.onlyOnce("/prices/quotes/", lease.prices().quotes().stream().map(Quote::id).toList());
    for (int i = 0; i < lease.tanks().size(); i++) {
      rules.complaints.addAll(TankRules.complaints(lease.tanks().get(i), "/tanks/" + i));
    }
    for (int i = 0; i < lease.separators().size(); i++) {
      rules.complaints.addAll(
          SeparatorRules.complaints(lease.separators().get(i), "/separators/" + i));
    }
    for (int i = 0; i < lease.gunBarrels().size(); i++) {
      rules.complaints.addAll(
          GunBarrelRules.complaints(lease.gunBarrels().get(i), "/gunBarrels/" + i));
    }
    for (int i = 0; i < lease.ownPipes().size(); i++) {
      rules.pipe(lease.ownPipes().get(i), "/ownPipes/" + i);
    }
    rules.complaints.addAll(FluidRules.complaints(lease.fluids(), "/fluids"));
    if (rules.complaints.isEmpty()) {
      rules.complaints.addAll(FlowDirection.complaints(lease));
    }
    return rules.complaints;
  }

  private void broken(LeaseRules.Broken broken) {
    boolean id = broken.place().endsWith("/id");
    complaints.add(
        new Complaint(
            broken.place(),
            midSentence(broken.words()),
            id ? "an id that nothing else has" : "the id of another thing on the lease"));
  }

  static String midSentence(String sentence) {
    return sentence.substring(0, 1).toLowerCase(Locale.ROOT)
        + sentence.substring(1).replaceAll("\\.$", "");
  }

  private void onlyOnce(String list, List<String> ids) {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < ids.size(); i++) {
      if (!seen.add(ids.get(i))) {
        complaints.add(
            new Complaint(
                list + i + "/id",
                "the id \"" + ids.get(i) + "\" a second time",
                "an id that nothing else in the list has"));
      }
    }
  }

  private void pipe(OwnPipe pipe, String place) {
    pipe.outside()
        .flatMap(
            outside ->
                notBelow(place + "/bore", "a bore of ", pipe.bore(), "the outside, ", outside))
        .ifPresent(complaints::add);
  }

  /** Complains where {@code small} is not under {@code large}. */
  static Optional<Complaint> notBelow(
      String place, String what, Quantity small, String than, Quantity large) {
    return small.si() < large.si()
        ? Optional.empty()
        : Optional.of(
            new Complaint(place, what + print(small), "less than " + than + print(large)));
  }

  /** Complains where {@code small} is above {@code large}. */
  static Optional<Complaint> above(
      String place, String what, Quantity small, String than, Quantity large) {
    return small.si() <= large.si() * (1 + 1e-9)
        ? Optional.empty()
        : Optional.of(
            new Complaint(place, what + print(small), "no more than " + than + print(large)));
  }

  private static String print(Quantity quantity) {
    return AmountText.print(quantity.typed());
  }
}
