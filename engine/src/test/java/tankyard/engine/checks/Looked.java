package tankyard.engine.checks;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.checks.all.AllChecks;
import tankyard.engine.lease.Lease;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.outlook.Outlook;
import tankyard.engine.study.Assumptions;
import tankyard.engine.study.CaseReport;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.Survey;
import tankyard.engine.study.Yard;
import tankyard.engine.window.Window;
import tankyard.engine.window.WindowFinder;

/** An example lease, one of its values changed at a time, and what the checks find on it. */
public final class Looked {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final JsonNode file;
  private final Evidence evidence;
  private final List<Finding> findings;

  private Looked(JsonNode file) {
    this(file, evidence(Survey.of(lease(file), Catalog.empty())));
  }

  private Looked(JsonNode file, Evidence evidence) {
    this.file = file;
    this.evidence = evidence;
    this.findings = AllChecks.look(evidence);
  }

  private static Evidence evidence(Survey survey) {
    List<CaseStudy> studies =
        survey.lease().cases().stream().map(c -> new CaseStudy(survey, c)).toList();
    List<Window> windows = WindowFinder.find(studies);
    Map<String, Double> gaugePa = new HashMap<>();
    windows.forEach(
        w -> w.setting().ifPresent(s -> gaugePa.put(w.separatorId(), s.gauge().pascals())));
    List<CaseResult> cases = studies.stream().map(s -> CaseReport.of(s, gaugePa)).toList();
    return new Evidence(
        survey,
        studies,
        cases,
        windows,
        Yard.of(survey.lease()),
        Outlook.of(studies, windows),
        Assumptions.of(survey.lease(), cases));
  }

  /** An example by the name of its file. */
  public static Looked at(String example) {
    try {
      Path path = Path.of("..", "docs", "examples", example + ".lease.json");
      return new Looked(JSON.readTree(Files.readAllBytes(path)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Lease lease(JsonNode file) {
    try {
      return LeaseFiles.read("test", new ByteArrayInputStream(JSON.writeValueAsBytes(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The same lease with one value put in its place in the file; {@code null} takes it out. */
  public Looked with(String pointer, Object value) {
    JsonNode copy = file.deepCopy();
    set(copy, pointer, value);
    return new Looked(copy);
  }

  /** The same with an amount. */
  public Looked with(String pointer, double value, String unit) {
    return with(pointer, amount(value, unit));
  }

  /** The same with one field set in every entry of a list; {@code null} takes it out. */
  public Looked withEach(String list, String field, Object value) {
    JsonNode copy = file.deepCopy();
    int entries = copy.at(list).size();
    for (int i = 0; i < entries; i++) {
      set(copy, list + "/" + i + "/" + field, value);
    }
    return new Looked(copy);
  }

  /** The same with one more entry in a list. */
  public Looked plus(String list, Object entry) {
    JsonNode copy = file.deepCopy();
    if (copy.at(list).isMissingNode()) {
      set(copy, list, List.of());
    }
    ((ArrayNode) copy.at(list)).add(JSON.valueToTree(entry));
    return new Looked(copy);
  }

  /** The same with a store to buy from. */
  public Looked stocked(Catalog catalog) {
    return new Looked(file, evidence(Survey.of(lease(file), catalog)));
  }

  /** The same with a result of every case put in by hand, to stand exactly on a limit. */
  public Looked seeing(UnaryOperator<CaseResult> change) {
    return new Looked(
        file,
        new Evidence(
            evidence.survey(),
            evidence.studies(),
            evidence.cases().stream().map(change).toList(),
            evidence.windows(),
            evidence.yard(),
            evidence.outlook(),
            evidence.assumptions()));
  }

  private static void set(JsonNode root, String pointer, Object value) {
    JsonPointer at = JsonPointer.compile(pointer);
    JsonNode parent = root.at(at.head());
    JsonNode node = JSON.valueToTree(value);
    if (parent instanceof ArrayNode array) {
      int index = at.last().getMatchingIndex();
      if (value == null) {
        array.remove(index);
      } else {
        array.set(index, node);
      }
    } else if (value == null) {
      ((ObjectNode) parent).remove(at.last().getMatchingProperty());
    } else {
      ((ObjectNode) parent).set(at.last().getMatchingProperty(), node);
    }
  }

  public static Map<String, Object> amount(double value, String unit) {
    return Map.of("value", value, "unit", unit);
  }

  public Evidence evidence() {
    return evidence;
  }

  public CaseResult caseOf(String id) {
    return evidence.cases().stream()
        .filter(c -> c.designCase().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  public Window window() {
    return evidence.windows().get(0);
  }

  public List<Finding> findings() {
    return findings;
  }

  /** Every finding of that id. */
  public List<Finding> all(String id) {
    return findings.stream().filter(f -> f.id().equals(id)).toList();
  }

  public boolean says(String id) {
    return !all(id).isEmpty();
  }

  /** The only finding of that id. */
  public Finding the(String id) {
    List<Finding> found = all(id);
    if (found.size() != 1) {
      throw new AssertionError("Expected one finding " + id + " but there are " + found);
    }
    return found.get(0);
  }
}
