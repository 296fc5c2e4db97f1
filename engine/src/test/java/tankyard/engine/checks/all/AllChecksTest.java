package tankyard.engine.checks.all;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;

/** The list of rules and how their findings are told. */
class AllChecksTest {

  @Test
  void noTwoRulesShareAnId() {
    assertThat(AllChecks.list()).extracting(Check::id).doesNotHaveDuplicates();
    assertThat(AllChecks.list().stream().flatMap(c -> c.gives().stream()).toList())
        .doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @ValueSource(strings = {"p1-osage-bend", "p2-sandstone-knob", "p3-coyote-creek-210-oil"})
  void theWorstComesFirstAndNothingIsToldTwice(String example) {
    List<Finding> found = Looked.at(example).findings();

    assertThat(found).isNotEmpty().extracting(Finding::severity).isSorted();
    assertThat(found).extracting(f -> f.id() + " " + f.thingId()).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @ValueSource(strings = {"p1-osage-bend", "p2-sandstone-knob", "p3-coyote-creek-210-oil"})
  void everyFindingIsOneThatSomeRuleSaysItGives(String example) {
    List<String> given = AllChecks.list().stream().flatMap(c -> c.gives().stream()).toList();

    assertThat(Looked.at(example).findings()).extracting(Finding::id).isSubsetOf(given);
  }

  @Test
  void likeFindingsFollowTheOrderOfTheLease() {
    Looked looked = Looked.at("p3-coyote-creek").withEach("/tanks", "switchHeight", null);

    assertThat(looked.all("high-switch-missing"))
        .extracting(Finding::thingId)
        .containsExactlyElementsOf(
            looked.evidence().lease().tanks().stream().map(t -> t.id()).toList());
  }

  @Test
  void ofOneRuleOnOneThingOnlyTheWorstCaseIsKept() {
    Looked looked = Looked.at("p3-coyote-creek");

    assertThat(looked.evidence().cases()).hasSize(2);
    assertThat(looked.all("overflow-too-small"))
        .extracting(Finding::thingId)
        .containsExactly("OV1", "OV2");
  }

  @Test
  void whatIsSaidNeverCallsALeaseSafe() {
    for (String example : List.of("p1-osage-bend", "p2-sandstone-knob", "p3-coyote-creek")) {
      for (Finding finding : Looked.at(example).findings()) {
        assertThat(finding.words() + finding.wayOut())
            .doesNotContainIgnoringCase("safe")
            .doesNotContainIgnoringCase("compliant");
      }
    }
  }
}
