package tankyard.engine.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.lease.Lease;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.study.CaseReport;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.LineResult;
import tankyard.engine.study.Survey;
import tankyard.engine.units.Unit;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Window;
import tankyard.engine.window.WindowFinder;

/** A well with two lines to the separator, one of them over a hill far too high for it. */
class HeldLineTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final double NINE_PSI = 9 * 6894.757293168;

  /**
   * P1 with a hill of 1,100 ft on a line of well 4, whose box stands at 851 ft.
   *
   * @param beside whether that line lies beside the one well 4 has
   */
  private static CaseStudy study(boolean beside) throws IOException {
    ObjectNode file =
        (ObjectNode) JSON.readTree(Files.readAllBytes(ExampleLease.file("p1-osage-bend")));
    ArrayNode lines = (ArrayNode) file.get("lines");
    ObjectNode own = (ObjectNode) lines.get(3);
    assertThat(own.get("id").asText()).isEqualTo("FL-W4");
    ObjectNode hill = beside ? own.deepCopy() : own;
    hill.put("id", "FL-HILL");
    hill.set("route", JSON.valueToTree(List.of(corner())));
    if (beside) {
      lines.add(hill);
    }
    Lease lease = LeaseFiles.read("hill", new ByteArrayInputStream(JSON.writeValueAsBytes(file)));
    return new CaseStudy(Survey.of(lease, Catalog.empty()), lease.cases().get(0));
  }

  private static Map<String, Object> corner() {
    return Map.of(
        "at",
        Map.of("east", Design.amount(1000, "ft"), "north", Design.amount(700, "ft")),
        "ground",
        Design.amount(1100, "ft"));
  }

  private static LineResult line(CaseResult result, String id) {
    return result.line(id).orElseThrow();
  }

  @Test
  void aLineItsCrestHoldsStandsAtItsEndsPressures() throws IOException {
    CaseResult result = CaseReport.of(study(true), Map.of("S1", NINE_PSI));
    LineResult held = line(result, "FL-HILL");
    LineResult other = line(result, "FL-W4");
    assertThat(held.flow().si()).isZero();
    assertThat(held.flowWords()).startsWith("held by its crest");
    assertThat(held.start().toPsi()).isEqualTo(other.start().toPsi());
    assertThat(held.end().toPsi()).isEqualTo(other.end().toPsi());
    // All of the well goes by the other line, but for what seeps.
    assertThat(other.flow().in(Unit.BARREL_PER_DAY)).isCloseTo(90, within(0.001));
    // The lowest pipe is 3 ft below the box; the hill's 249 ft stand in none of it.
    assertThat(held.highest().toPsi()).isLessThan(other.highest().toPsi() + 3);
    assertThat(held.partFull()).isEmpty();
  }

  @Test
  void itsRatingBoundsTheGaugeAsAnyLinesDoes() throws IOException {
    Window window = WindowFinder.find(List.of(study(true))).get(0);
    assertThat(window.most().orElseThrow().kind()).isEqualTo(PressureLimit.Kind.RELIEF_VALVE);
  }

  /** 249 ft and more of it stand on the line at any reading: over 100 psi in pipe for 80. */
  @Test
  void aLineOverItsRatingAtAnyReadingIsNoLimitOfTheGauge() throws IOException {
    CaseStudy only = study(false);
    LineResult hill = line(CaseReport.of(only, Map.of("S1", NINE_PSI)), "FL-HILL");
    assertThat(hill.highest().toPsi()).isGreaterThan(hill.rating().orElseThrow().toPsi());
    assertThat(WindowFinder.find(List.of(only)).get(0).allowed())
        .filteredOn(l -> l.kind() == PressureLimit.Kind.PIPE_RATING)
        .noneMatch(l -> l.thingId().equals("FL-HILL"))
        .isNotEmpty();
  }
}
