package tankyard.app.shell;

import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.input.KeyCombination;

/**
 * Something that can be done from a menu, a button or a key.
 *
 * @param id of every control made of it, after "menu-" or "button-"
 * @param words as a menu says it
 * @param key that does it; empty for none
 * @param reason why one would, for the tooltip
 * @param enabled whether it can be done now
 */
public record Action(
    String id,
    ObservableValue<String> words,
    Optional<KeyCombination> key,
    String reason,
    ObservableValue<Boolean> enabled,
    Runnable run) {

  public static Action of(String id, String words, String key, Runnable run) {
    return new Action(
        id,
        Bindings.createStringBinding(() -> words),
        key.isEmpty() ? Optional.empty() : Optional.of(KeyCombination.valueOf(key)),
        "",
        Bindings.createObjectBinding(() -> true),
        run);
  }

  public Action because(String why) {
    return new Action(id, words, key, why, enabled, run);
  }

  public Action when(ObservableValue<Boolean> can) {
    return new Action(id, words, key, reason, can, run);
  }

  public Action named(ObservableValue<String> changing) {
    return new Action(id, changing, key, reason, enabled, run);
  }
}
