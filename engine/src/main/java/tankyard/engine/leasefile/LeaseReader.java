package tankyard.engine.leasefile;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;

/**
 * Reads one file, check by check: text, JSON, version, form, values, sense. Each check may count on
 * those before it, so the first that complains ends the reading.
 */
final class LeaseReader {
  /** Parts that a file may leave out where everything in them is usual. */
  private static final List<String> USUAL = List.of("practice", "prices");

  private final JsonText json;

  private LeaseReader(JsonText json) {
    this.json = json;
  }

  static Lease read(String file, byte[] bytes) throws LeaseFileException {
    JsonText json = new JsonText(file, Utf8.decode(file, bytes));
    return new LeaseReader(json).read(json.parse());
  }

  private Lease read(ObjectNode tree) throws LeaseFileException {
    refuse(LeaseVersions.CURRENT.bringUpToDate(tree).stream().toList());
    refuse(LeaseSchema.complaints(tree));
    LeaseVersions.behead(tree);
    refuse(ValueCheck.complaints(tree));
    USUAL.stream().filter(part -> !tree.has(part)).forEach(tree::putObject);
    Lease lease = bind(tree);
    refuse(SenseRules.complaints(lease));
    return lease.withUnknowns(UnknownFields.collect(tree, LeaseMapper.toTree(lease)));
  }

  private void refuse(List<Complaint> complaints) throws LeaseFileException {
    if (!complaints.isEmpty()) {
      throw new LeaseFileException(complaints.stream().map(json::locate).toList(), null);
    }
  }

  private Lease bind(ObjectNode tree) throws LeaseFileException {
    try {
      return LeaseMapper.fromTree(tree);
    } catch (JsonMappingException e) {
      throw new LeaseFileException(List.of(json.locate(refusedByARecord(e))), e);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A tree has no syntax to be wrong", e);
    }
  }

  /** The records check themselves as well; what they say is passed on with the place. */
  private static Complaint refusedByARecord(JsonMappingException e) {
    JsonPointer place = JsonPointer.empty();
    for (JsonMappingException.Reference step : e.getPath()) {
      place =
          step.getFieldName() == null
              ? place.appendIndex(step.getIndex())
              : place.appendProperty(step.getFieldName());
    }
    String why =
        Optional.ofNullable(e.getCause()).map(Throwable::getMessage).orElse(e.getOriginalMessage());
    return new Complaint(place.toString(), why, "a value that its object allows");
  }
}
