package tankyard.engine.leasefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Well;

class UnknownFieldsTest {

  @Test
  void anUnknownFieldIsKnownByTheIdOfItsOwner() throws Exception {
    assertThat(painted().unknowns().fields())
        .isEqualTo(
            Map.of(
                "/wells/W1/colour", "\"red\"",
                "/wells/W1/oil/by", "[\"bucket\", 2]",
                "/prices/contingency/why", "{\"who\": null}"));
  }

  @Test
  void itStaysWithItsOwnerWhenOthersComeBefore() throws Exception {
    Lease lease = painted();
    Well first = lease.wells().get(0);
    Lease more = lease.withEachWell(w -> w.withId("W0").movedTo(MapPoint.ofFeet(0, 0))).with(first);

    String json = LeaseFiles.toJson(more);

    assertThat(more.wells()).extracting(Well::id).containsExactly("W0", "W1");
    assertThat(json.indexOf("\"colour\": \"red\"")).isGreaterThan(json.indexOf("\"W1\""));
    assertThat(json).contains("\"unit\": \"bbl/d\", \"by\": [\"bucket\", 2]}");
  }

  @Test
  void itGoesWithItsOwner() throws Exception {
    assertThat(LeaseFiles.toJson(painted().without("W1")))
        .doesNotContain("colour", "bucket")
        .contains("\"why\": {\"who\": null}");
  }

  @Test
  void aFieldThatWeWriteOurselvesComesFirst() throws Exception {
    Lease lease =
        painted()
            .withUnknowns(
                new tankyard.engine.lease.Unknowns(Map.of("/wells/W1/name", "\"theirs\"")));

    assertThat(LeaseFiles.toJson(lease)).contains("\"Well 1\"").doesNotContain("theirs");
  }

  private static Lease painted() throws LeaseFileException {
    String json =
        LeaseFiles.toJson(SampleLease.small())
            .replace("\"id\": \"W1\",", "\"colour\": \"red\", \"id\": \"W1\",")
            .replace(
                "{\"value\": 3, \"unit\": \"bbl/d\"}",
                "{\"value\": 3, \"by\": [\"bucket\", 2], \"unit\": \"bbl/d\"}")
            .replace("\"contingency\": {", "\"contingency\": {\"why\": {\"who\": null}, ");
    return LeaseFiles.read(
        "painted", new ByteArrayInputStream(json.getBytes(StandardCharsets.UTF_8)));
  }
}
