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
  void whatCannotBeReadStaysWhereItIs() throws IOException {
    ObjectNode tree = tree("'length': 'ten paces'");
    assertThat(tree.has("berms")).isFalse();
    assertThat(tree.at("/site/berm/length").textValue()).isEqualTo("ten paces");
  }

  /** A berm of 60 by 44 ft, with one more field or another value in it, brought up to date. */
  private static ObjectNode tree(String field) throws IOException {
    String json =
        ("{'site': {'berm': {'corner': {'east': '20 ft', 'north': '-22 ft'}, 'length': '60 ft',"
                + " 'width': '44 ft', "
                + field
                + "}}}")
            .replace('\'', '"');
    ObjectNode tree = (ObjectNode) LeaseMapper.mapper().readTree(json);
    new BermsWithCorners().apply(tree);
    return tree;
  }
}
