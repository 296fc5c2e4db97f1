package tankyard.engine.leasefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.Lease;

/** Gun barrels in a lease file: what is read, and what is refused and where. */
class GunBarrelFileTest {
  private static final String BARREL = "/gunBarrels/0";

  private static ObjectNode tree() throws Exception {
    String text =
        Files.readString(ExampleFilesTest.FOLDER.resolve("p4-old-windmill" + LeaseFiles.EXTENSION));
    return (ObjectNode) LeaseMapper.mapper().readTree(text);
  }

  private static Lease read(JsonNode tree) throws LeaseFileException {
    byte[] bytes = LeasePrinter.print(tree).getBytes(StandardCharsets.UTF_8);
    return LeaseFiles.read("yard", new ByteArrayInputStream(bytes));
  }

  private static ObjectNode with(String pointer, String value) throws Exception {
    ObjectNode tree = tree();
    JsonPointer at = JsonPointer.compile(pointer);
    ((ObjectNode) tree.at(at.head())).put(at.last().getMatchingProperty(), value);
    return tree;
  }

  @ParameterizedTest
  @CsvSource({
    "interfaceHeight, 18 ft, an interface at 18 ft, less than the oil outlet",
    "oilOutletHeight, 20.1 ft, an oil outlet at 20.1 ft, no more than the shell height",
    "weirHeight, 20.1 ft, a weir at 20.1 ft, no more than the shell height",
    "nipple, 21 ft, 21 ft, 0 ft to 20 ft",
    "diameter, 0 ft, 0 ft, 1 ft to 100 ft",
    "otherWater, 10.3 SG, 10.3 SG, 0.9 SG to 1.5 SG",
    "otherOil, 20 psi, psi, a gravity",
    "vent, shut, shut, one of",
  })
  void aValueThatCantBeIsRefusedWhereItStands(
      String field, String value, String found, String accepted) {
    assertThatThrownBy(() -> read(with(BARREL + "/" + field, value)))
        .isInstanceOf(LeaseFileException.class)
        .hasMessageContaining(BARREL + "/" + field + ": found ")
        .hasMessageContaining(found)
        .hasMessageContaining(accepted);
  }

  @ParameterizedTest
  @CsvSource({
    "interfaceHeight, 17.9 ft",
    "oilOutletHeight, 20 ft",
    "weirHeight, 20 ft",
    "inletHeight, 24 ft"
  })
  void aValueJustWithinIsRead(String field, String value) throws Exception {
    assertThat(read(with(BARREL + "/" + field, value)).gunBarrels()).hasSize(1);
  }

  @Test
  void aHeightItCantDoWithoutMustBeThere() throws Exception {
    ObjectNode tree = tree();
    ((ObjectNode) tree.at(BARREL)).remove("oilOutletHeight");

    assertThatThrownBy(() -> read(tree)).hasMessageContaining(BARREL + "/oilOutletHeight");
  }

  @Test
  void itsIdIsItsOwn() {
    assertThatThrownBy(() -> read(with(BARREL + "/id", "OT1")))
        .hasMessageContaining("is used twice");
  }

  @Test
  void aLineFromATankBackIntoItRunsBackwards() throws Exception {
    ObjectNode tree = tree();
    ObjectNode line = ((ArrayNode) tree.get("lines")).addObject();
    line.put("id", "odd").put("service", "water-leg").put("from", "WT1").put("to", "GB1");
    line.put("pipe", "steel-3").put("status", "new");

    assertThatThrownBy(() -> read(tree)).hasMessageContaining("back to the gun barrel");
  }

  @Test
  void whatNobodySaidIsEmpty() throws Exception {
    GunBarrel barrel = read(tree()).gunBarrels().get(0);

    assertThat(barrel.weirHeight()).isEmpty();
    assertThat(barrel.downcomerPipe()).isEmpty();
    assertThat(barrel.vent()).contains(GunBarrel.Vent.OPEN);
    assertThat(barrel.kind()).isEqualTo("gun barrel");
  }
}
