package tankyard.engine.leasefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Practice;
import tankyard.engine.lease.Prices;
import tankyard.engine.lease.Well;
import tankyard.engine.units.Unit;

/** What a person may write, beyond what the program writes itself. */
class HandWrittenFileTest {
  private static final String LEAST =
      """
      {"format": "tankyard-lease", "version": 2, "site": {},
       "fluids": {"oil": "36 API", "brine": "1.06 SG"}, "extra": 1
      """;

  @Test
  void aFileMayLeaveOutAllButSiteAndFluids() throws Exception {
    Lease lease = read(LEAST + "}");

    assertThat(lease.name()).isEmpty();
    assertThat(lease.wells()).isEmpty();
    assertThat(lease.practice()).isEqualTo(Practice.usual());
    assertThat(lease.prices()).isEqualTo(Prices.none());
  }

  @Test
  void amountsMayBeTextAsPeopleTypeThem() throws Exception {
    Well well = well("\"5 ft 6 in\"");

    assertThat(well.boxHeight().orElseThrow().toFeet()).isEqualTo(5.5);
    assertThat(well.oil().typed().unit()).isEqualTo(Unit.BARREL_PER_DAY);
    assertThat(well.surge().orElseThrow().ratio()).isEqualTo(1.5);
  }

  @ParameterizedTest
  @ValueSource(strings = {"feet", "FT", "foot"})
  void unitsMayHaveTheirOtherNames(String unit) throws Exception {
    Well well = well("{\"value\": 2, \"unit\": \"" + unit + "\"}");

    assertThat(well.boxHeight().orElseThrow().typed().unit()).isEqualTo(Unit.FOOT);
  }

  @Test
  void aRatioMayBeANumberOrAnAmountWithoutUnit() throws Exception {
    Lease lease =
        read(LEAST + ", \"practice\": {\"designWater\": 2, \"reliefShare\": {\"value\": 0.9}}}");

    assertThat(lease.practice().designWater().orElseThrow().ratio()).isEqualTo(2);
    assertThat(lease.practice().reliefShare().orElseThrow().ratio()).isEqualTo(0.9);
  }

  @Test
  void aNumberAloneIsNoLengthSinceNobodyKnowsItsUnit() {
    assertThatThrownBy(() -> well("\"1e1\""))
        .hasMessageContaining("/wells/0/boxHeight: found \"1e1\" has no unit");
  }

  @Test
  void everyProblemOfOneCheckIsListed() {
    assertThatThrownBy(() -> read("{\"format\": \"tankyard-lease\", \"version\": 2}"))
        .isInstanceOfSatisfying(
            LeaseFileException.class,
            e ->
                assertThat(e.problems())
                    .extracting(Problem::place)
                    .containsExactly("/site", "/fluids"));
  }

  private static Well well(String boxHeight) throws LeaseFileException {
    String json =
        LEAST
            + """
              , "wells": [{"id": "W1", "at": {"east": "300 ft", "north": "0.1 mi"},
                "status": "have", "oil": "3 bpd", "water": "1,200 bbl/d", "surge": "150 %%",
                "boxHeight": %s}]}
              """
                .formatted(boxHeight);
    return read(json).wells().get(0);
  }

  private static Lease read(String json) throws LeaseFileException {
    return LeaseFiles.read("hand", new ByteArrayInputStream(json.getBytes(StandardCharsets.UTF_8)));
  }
}
