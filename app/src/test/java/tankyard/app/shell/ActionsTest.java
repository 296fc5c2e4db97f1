package tankyard.app.shell;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ActionsTest {
  private final Actions actions = new Actions();

  @Test
  void no_two_actions_share_a_key() {
    actions.add(Action.of("save", "Save", "Shortcut+S", () -> {}));
    assertThatThrownBy(() -> actions.add(Action.of("split", "Split", "Shortcut+S", () -> {})))
        .hasMessageContaining("save")
        .hasMessageContaining("split");
  }

  @Test
  void no_two_actions_share_an_id() {
    actions.add(Action.of("save", "Save", "", () -> {}));
    assertThatThrownBy(() -> actions.add(Action.of("save", "Save all", "", () -> {})))
        .hasMessageContaining("save");
  }
}
