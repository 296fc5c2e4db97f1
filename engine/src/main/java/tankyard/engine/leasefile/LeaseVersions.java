package tankyard.engine.leasefile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;

/**
 * The versions of the lease file. Older files are brought up to date step by step; newer ones are
 * refused, since what they mean can only be guessed.
 *
 * @param newest the version written
 * @param steps in order, one for each version before the newest
 */
record LeaseVersions(int newest, List<Migration> steps) {
  static final String FORMAT = "tankyard-lease";

  static final LeaseVersions CURRENT = new LeaseVersions(2, List.of(new BermsWithCorners()));

  LeaseVersions {
    steps = List.copyOf(steps);
    for (int i = 0; i < newest - 1; i++) {
      if (i >= steps.size() || steps.get(i).from() != i + 1) {
        throw new IllegalArgumentException("There is no step from version " + (i + 1));
      }
    }
  }

  /** Brings a file's tree up to date, or says why not. */
  Optional<Complaint> bringUpToDate(ObjectNode tree) {
    Optional<Complaint> wrong = refuse(tree);
    if (wrong.isPresent()) {
      return wrong;
    }
    for (Migration step : steps.subList(tree.get("version").intValue() - 1, steps.size())) {
      Optional<Complaint> lost = step.apply(tree);
      if (lost.isPresent()) {
        return lost;
      }
    }
    tree.put("version", newest);
    return Optional.empty();
  }

  private Optional<Complaint> refuse(ObjectNode tree) {
    JsonNode format = tree.path("format");
    if (!format.isTextual() || !format.textValue().equals(FORMAT)) {
      return Optional.of(
          new Complaint("/format", found(format), "\"" + FORMAT + "\": this may be no lease file"));
    }
    JsonNode version = tree.path("version");
    if (!version.isInt() || version.intValue() < 1) {
      return Optional.of(
          new Complaint("/version", found(version), "a whole number from 1 to " + newest));
    }
    if (version.intValue() > newest) {
      return Optional.of(
          new Complaint(
              "/version",
              "version " + version.intValue() + ", written by a newer Tankyard",
              "versions up to " + newest + "; open it with that newer Tankyard"));
    }
    return Optional.empty();
  }

  private static String found(JsonNode node) {
    return node.isMissingNode() ? "nothing" : Complaint.shown(node);
  }

  /** Takes out what {@link #head} puts in; it is no part of the lease. */
  static void behead(ObjectNode tree) {
    tree.remove(List.of("format", "version"));
  }

  /** The start of a file of the newest version. */
  ObjectNode head() {
    ObjectNode tree = LeaseMapper.mapper().createObjectNode();
    tree.put("format", FORMAT);
    tree.put("version", newest);
    return tree;
  }
}
