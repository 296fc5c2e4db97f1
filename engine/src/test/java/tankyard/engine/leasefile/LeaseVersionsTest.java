package tankyard.engine.leasefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LeaseVersionsTest {

  @Test
  void anOldFileTakesEveryStepToTheNewestVersion() {
    LeaseVersions versions = new LeaseVersions(3, List.of(step(1), step(2)));
    ObjectNode tree = file(1);

    assertThat(versions.bringUpToDate(tree)).isEmpty();

    assertThat(tree.get("steps").textValue()).isEqualTo("12");
    assertThat(tree.get("version").intValue()).isEqualTo(3);
  }

  @Test
  void aFileInBetweenTakesOnlyTheStepsItLacks() {
    LeaseVersions versions = new LeaseVersions(3, List.of(step(1), step(2)));
    ObjectNode tree = file(2);

    assertThat(versions.bringUpToDate(tree)).isEmpty();

    assertThat(tree.get("steps").textValue()).isEqualTo("2");
  }

  @Test
  void aNewerFileIsRefusedAndLeftAsItIs() {
    LeaseVersions versions = new LeaseVersions(3, List.of(step(1), step(2)));
    ObjectNode tree = file(4);

    assertThat(versions.bringUpToDate(tree))
        .hasValueSatisfying(
            c -> {
              assertThat(c.place()).isEqualTo("/version");
              assertThat(c.found()).contains("version 4", "newer");
              assertThat(c.accepted()).contains("versions up to 3");
            });
    assertThat(tree).isEqualTo(file(4));
  }

  @Test
  void aVersionWithoutItsStepCannotBeMade() {
    List<Migration> steps = List.of(step(2));

    assertThatThrownBy(() -> new LeaseVersions(3, steps))
        .hasMessageContaining("no step from version 1");
  }

  private static ObjectNode file(int version) {
    ObjectNode tree = LeaseMapper.mapper().createObjectNode();
    return tree.put("format", LeaseVersions.FORMAT).put("version", version).put("steps", "");
  }

  private static Migration step(int from) {
    return new Migration() {
      @Override
      public int from() {
        return from;
      }

      @Override
      public Optional<Complaint> apply(ObjectNode tree) {
        tree.put("steps", tree.get("steps").textValue() + from);
        return Optional.empty();
      }
    };
  }
}
