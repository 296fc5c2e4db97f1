package tankyard.engine.leasefile;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.units.Amount;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Unit;

/**
 * Looks at every quantity of a document whose form is right: that its unit measures what it should,
 * and that it is not absurd.
 */
final class ValueCheck {
  private final List<Complaint> complaints = new ArrayList<>();

  private ValueCheck() {}

  static List<Complaint> complaints(JsonNode tree) {
    ValueCheck check = new ValueCheck();
    check.object(tree, Lease.class, "");
    return check.complaints;
  }

  private void object(JsonNode node, Class<?> type, String place) {
    for (RecordShape.Field field : RecordShape.of(type).fields().values()) {
      JsonNode value = node.path(field.name());
      String path = Complaint.child(place, field.name());
      if (value.isMissingNode()) {
        continue;
      }
      if (field.list()) {
        for (int i = 0; i < value.size(); i++) {
          value(value.get(i), type, field, path + "/" + i);
        }
      } else {
        value(value, type, field, path);
      }
    }
  }

  private void value(JsonNode node, Class<?> owner, RecordShape.Field field, String place) {
    Optional<QuantityKind<?>> kind = QuantityKind.of(field.type());
    if (kind.isPresent()) {
      quantity(node, kind.get(), Limits.of(owner, field.name()), place);
    } else if (field.isRecord()) {
      object(node, field.type(), place);
    } else if (field.type() == LocalDate.class) {
      date(node.asText(), place);
    }
  }

  private void quantity(JsonNode node, QuantityKind<?> kind, Optional<Limit> limit, String place) {
    Amount amount;
    try {
      amount = AmountJson.read(node, kind.dimension());
    } catch (IllegalArgumentException e) {
      complaints.add(new Complaint(place, unreadable(node, e), accepted(kind.dimension())));
      return;
    }
    if (limit.isPresent() && !limit.get().allows(amount)) {
      complaints.add(new Complaint(place, Complaint.shown(node), limit.get().words()));
    }
  }

  private static String unreadable(JsonNode node, IllegalArgumentException e) {
    String why = e.getMessage().replaceAll("\\. .*|\\.$", "");
    String shown = Complaint.shown(node);
    return why.startsWith(shown) ? why : shown + " (" + why + ")";
  }

  private static String accepted(Dimension dimension) {
    String units = String.join(", ", Unit.symbols(dimension));
    return dimension == Dimension.FRACTION
        ? "a plain number or one in %"
        : Complaint.one(dimension.words()) + " in one of " + units;
  }

  private void date(String text, String place) {
    try {
      LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      complaints.add(new Complaint(place, "\"" + text + "\"", "a day of the calendar"));
    }
  }
}
