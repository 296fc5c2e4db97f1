package tankyard.engine.leasefile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tankyard.engine.lease.Lease;

/** What becomes of a berm of the first version of the file. */
class BermsWithCornersTest {
  private static final String OLD = "p3-of-version-1.lease.json";

  @Test
  void anOldFileReadsAsTheNewOneDoes() throws IOException, LeaseFileException {
    Lease old;
    try (InputStream in = BermsWithCornersTest.class.getResourceAsStream(OLD)) {
      old = LeaseFiles.read(OLD, in);
    }
    Lease today = LeaseFiles.read(Path.of("../docs/examples/p3-coyote-creek.lease.json"));
    assertThat(old.berms()).hasSize(1);
    assertThat(old).isEqualTo(today);
  }

  @Test
  void aBermOfAHeightStandsAlready() throws IOException {
    ObjectNode tree = tree("'height': {'value': 2, 'unit': 'ft'}");
    assertThat(tree.at("/berms/0/status").textValue()).isEqualTo("have");
    assertThat(tree.at("/site").has("berm")).isFalse();
  }

  @Test
  void unitsMayDiffer() throws IOException {
    ObjectNode tree = tree("'length': '10 m'");
    assertThat(tree.at("/berms/0/corners/2/east/value").doubleValue()).isEqualTo(52.808399);
    assertThat(tree.at("/berms/0/corners/2/east/unit").textValue()).isEqualTo("ft");
  }

  @Test
  void anIdThatIsTakenIsLeftAlone() throws IOException {
    ObjectNode tree = tree("'length': '10 m'}}, 'wells': [{'id': 'BM1'}], 'more': {'x': {'y': 0");
    assertThat(tree.at("/berms/0/id").textValue()).isEqualTo("BM2");
  }

  @Test
  void whatCannotBeReadIsRefusedWithItsPlace() throws IOException {
    ObjectNode tree = raw("'length': 'ten paces'");
    assertThat(new BermsWithCorners().apply(tree))
        .hasValueSatisfying(c -> assertThat(c.place()).isEqualTo("/site/berm/length"));
    assertThat(tree).isEqualTo(raw("'length': 'ten paces'"));
    assertThat(new BermsWithCorners().apply(raw("'width': '0 ft'")))
        .hasValueSatisfying(c -> assertThat(c.accepted()).contains("above zero"));
    assertThat(new BermsWithCorners().apply(raw("'corner': {'east': '1 ft'}")))
        .hasValueSatisfying(c -> assertThat(c.place()).isEqualTo("/site/berm/corner/north"));
  }

  @Test
  void fieldsNobodyKnowsGoAlongAndTakeNothingsPlace() throws IOException {
    ObjectNode tree = tree("'name': 'mine', 'liner': 'clay', 'height': null");
    assertThat(tree.at("/berms/0/liner").textValue()).isEqualTo("clay");
    assertThat(tree.at("/berms/0/name").textValue()).isEqualTo("Berm");
    assertThat(tree.at("/berms/0/status").textValue()).isEqualTo("new");
  }

  /** A berm of 60 by 44 ft, with one more field or another value in it, brought up to date. */
  private static ObjectNode tree(String field) throws IOException {
    ObjectNode tree = raw(field);
    assertThat(new BermsWithCorners().apply(tree)).isEmpty();
    return tree;
  }

  private static ObjectNode raw(String field) throws IOException {
    String json =
        ("{'site': {'berm': {'corner': {'east': '20 ft', 'north': '-22 ft'}, 'length': '60 ft',"
                + " 'width': '44 ft', "
                + field
                + "}}}")
            .replace('\'', '"');
    return (ObjectNode) LeaseMapper.mapper().readTree(json);
  }
}
