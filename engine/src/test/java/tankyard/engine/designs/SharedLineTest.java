package tankyard.engine.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.lease.Lease;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.study.CaseReport;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.LegRun;
import tankyard.engine.study.Survey;

/** A leg and a suction that two share carry what both send. */
class SharedLineTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static ObjectNode read(String example) {
    try {
      return (ObjectNode) JSON.readTree(Files.readAllBytes(ExampleLease.file(example)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static CaseStudy study(JsonNode file) {
    try {
      Lease lease =
          LeaseFiles.read("shared", new ByteArrayInputStream(JSON.writeValueAsBytes(file)));
      return new CaseStudy(Survey.of(lease, Catalog.empty()), lease.cases().get(0));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static ObjectNode of(ObjectNode file, String list, String id) {
    return StreamSupport.stream(file.withArray(list).spliterator(), false)
        .filter(n -> n.get("id").asText().equals(id))
        .map(n -> (ObjectNode) n)
        .findFirst()
        .orElseThrow();
  }

  /** Another of the same, in the same place. */
  private static ObjectNode copy(ObjectNode file, String list, String id, String as) {
    ObjectNode copy = of(file, list, id).deepCopy();
    copy.put("id", as);
    copy.put("name", as);
    file.withArray(list).add(copy);
    return copy;
  }

  private static void tee(ObjectNode file, String id, JsonNode at) {
    ArrayNode tees = file.get("tees") instanceof ArrayNode there ? there : file.putArray("tees");
    ObjectNode tee = tees.addObject();
    tee.put("id", id).put("name", id).put("status", "new");
    tee.set("at", at.get("at").deepCopy());
    if (at.has("ground")) {
      tee.set("ground", at.get("ground").deepCopy());
    }
  }

  private static void ends(ObjectNode line, String from, String to) {
    line.put("from", from);
    line.put("to", to);
  }

  /** Two of four wells on a second separator beside the first, and one leg from a tee on. */
  private static ObjectNode twoSeparators() {
    ObjectNode file = read("p1-osage-bend");
    copy(file, "separators", "S1", "S2");
    tee(file, "TW", of(file, "separators", "S1"));
    of(file, "lines", "FL-W3").put("to", "S2");
    of(file, "lines", "FL-W4").put("to", "S2");
    ends(copy(file, "lines", "WL1", "WLa"), "S1", "TW");
    ends(copy(file, "lines", "WL1", "WLb"), "S2", "TW");
    copy(file, "lines", "OL1", "OLb").put("from", "S2");
    of(file, "lines", "WL1").put("from", "TW");
    return file;
  }

  @Test
  void aCommonWaterLegCarriesTheWaterOfBothSeparators() {
    CaseStudy study = study(twoSeparators());
    double[] own = new double[2];
    for (int i = 0; i < 2; i++) {
      LegRun leg = study.waterLegs(study.lease().separators().get(i)).get(0);
      own[i] = leg.runs().get(0).flow();
      assertThat(leg.runs().get(0).laid().id()).isEqualTo(i == 0 ? "WLa" : "WLb");
    }
    for (int i = 0; i < 2; i++) {
      LegRun leg = study.waterLegs(study.lease().separators().get(i)).get(0);
      assertThat(leg.runs().get(1).laid().id()).isEqualTo("WL1");
      assertThat(leg.runs().get(1).flow()).isCloseTo(own[0] + own[1], within(1e-15));
      assertThat(leg.runs().get(1).flowWords()).contains("share the line");
    }
    assertThat(own[1]).isPositive();
  }

  @Test
  void aCommonOilLegCarriesTheOilOfBoth() {
    ObjectNode file = twoSeparators();
    tee(file, "TO", of(file, "separators", "S1"));
    of(file, "lines", "OL1").put("to", "TO");
    of(file, "lines", "OLb").put("to", "TO");
    ends(copy(file, "lines", "OL1", "OLc"), "TO", file.at("/tanks/0/id").asText());
    CaseStudy study = study(file);
    List<LegRun> legs =
        study.lease().separators().stream().flatMap(s -> study.oilLegs(s).stream()).toList();
    assertThat(legs).hasSize(2);
    double both = legs.stream().mapToDouble(LegRun::rate).sum();
    legs.forEach(leg -> assertThat(leg.runs().get(1).flow()).isCloseTo(both, within(1e-15)));
  }

  @Test
  void aCommonSuctionCarriesWhatBothPumpsTake() {
    ObjectNode file = read("p5-prairie-flood");
    ObjectNode suction =
        StreamSupport.stream(file.withArray("lines").spliterator(), false)
            .filter(n -> n.get("service").asText().equals("suction"))
            .map(n -> (ObjectNode) n)
            .findFirst()
            .orElseThrow();
    String pump = suction.get("to").asText();
    CaseStudy alone = study(file);
    copy(file, "injectionPumps", pump, "PB");
    tee(file, "TS", of(file, "injectionPumps", pump));
    String id = suction.get("id").asText();
    ends(copy(file, "lines", id, "Sa"), "TS", pump);
    ends(copy(file, "lines", id, "Sb"), "TS", "PB");
    suction.put("to", "TS");
    CaseResult both = CaseReport.of(study(file), Map.of());
    double one = CaseReport.of(alone, Map.of()).line(id).orElseThrow().flow().si();
    assertThat(both.line(id).orElseThrow().flow().si()).isCloseTo(2 * one, within(1e-12));
    assertThat(both.line("Sb").orElseThrow().flow().si()).isCloseTo(one, within(1e-12));
  }
}
