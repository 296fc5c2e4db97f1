package tankyard.engine.designs;

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
import tankyard.engine.catalog.Catalog;
import tankyard.engine.lease.Lease;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.outlook.Outlook;
import tankyard.engine.outlook.RunOut;
import tankyard.engine.study.BermResult;
import tankyard.engine.study.CaseReport;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.Survey;
import tankyard.engine.units.Unit;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Window;
import tankyard.engine.window.WindowFinder;

/** One example lease with everything worked out. */
final class Design {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final JsonNode file;
  final Survey survey;
  final Window window;
  final List<CaseStudy> studies;
  private final Map<String, Double> gaugePa = new HashMap<>();

  private Design(JsonNode file) {
    this.file = file;
    survey = Survey.of(lease(file), Catalog.empty());
    studies = survey.lease().cases().stream().map(c -> new CaseStudy(survey, c)).toList();
    window = WindowFinder.find(studies).get(0);
    window.setting().ifPresent(s -> gaugePa.put(window.separatorId(), s.gauge().pascals()));
  }

  static Design of(String name) {
    try {
      Path path = Path.of("..", "docs", "examples", name + ".lease.json");
      return new Design(JSON.readTree(Files.readAllBytes(path)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Lease lease(JsonNode file) {
    try {
      return LeaseFiles.read("design", new ByteArrayInputStream(JSON.writeValueAsBytes(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The same lease with one value changed, by its place in the file. */
  Design with(String pointer, Object value) {
    JsonNode copy = file.deepCopy();
    JsonPointer at = JsonPointer.compile(pointer);
    JsonNode parent = copy.at(at.head());
    JsonNode node = JSON.valueToTree(value);
    if (parent instanceof ArrayNode array) {
      array.set(at.last().getMatchingIndex(), node);
    } else {
      ((ObjectNode) parent).set(at.last().getMatchingProperty(), node);
    }
    return new Design(copy);
  }

  /** The same for the same field of every entry of a list. */
  Design withEach(String list, String field, Object value) {
    JsonNode copy = file.deepCopy();
    copy.at(list).forEach(entry -> ((ObjectNode) entry).set(field, JSON.valueToTree(value)));
    return new Design(copy);
  }

  /** The same with a field taken out of every entry of a list. */
  Design withoutEach(String list, String field) {
    JsonNode copy = file.deepCopy();
    copy.at(list).forEach(entry -> ((ObjectNode) entry).remove(field));
    return new Design(copy);
  }

  static Map<String, Object> amount(double value, String unit) {
    return Map.of("value", value, "unit", unit);
  }

  CaseResult today() {
    return CaseReport.of(studies.get(0), gaugePa);
  }

  CaseResult at(double gaugePsi) {
    double pa = gaugePsi * 6894.757293168;
    return CaseReport.of(studies.get(0), Map.of(window.separatorId(), pa));
  }

  CaseResult caseOf(String id) {
    CaseStudy study =
        studies.stream().filter(s -> s.designCase().id().equals(id)).findFirst().orElseThrow();
    return CaseReport.of(study, gaugePa);
  }

  Outlook outlook() {
    return Outlook.of(studies, List.of(window)).orElseThrow();
  }

  /** Months until that runs out. */
  double month(RunOut.Kind kind) {
    return outlook().of(kind).orElseThrow().after().value().in(Unit.MONTH);
  }

  PressureLimit least() {
    return window.least().orElseThrow();
  }

  PressureLimit most() {
    return window.most().orElseThrow();
  }

  double leastPsi() {
    return least().gauge().value().toPsi();
  }

  double mostPsi() {
    return most().gauge().value().toPsi();
  }

  double cv() {
    return survey.lease().separators().get(0).dumpValve().cv().toGpmPerRootPsi();
  }

  /** Specific gravity of its brine. */
  double brine() {
    return survey.lease().fluids().brine().specific();
  }

  double inletFeet(int tank) {
    return survey.lease().tanks().get(tank).inletHeight().toFeet();
  }

  double bermFeet() {
    return BermResult.of(survey.lease()).get(0).needed().value().toFeet();
  }
}
