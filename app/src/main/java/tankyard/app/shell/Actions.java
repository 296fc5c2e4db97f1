package tankyard.app.shell;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javafx.scene.input.KeyCombination;

/** Every action of the window, each with one id and one key. */
public final class Actions {
  private final Map<String, Action> byId = new LinkedHashMap<>();

  /**
   * Adds one.
   *
   * @throws IllegalArgumentException if its id or its key is taken
   */
  public Action add(Action action) {
    if (byId.containsKey(action.id())) {
      throw new IllegalArgumentException("Two actions are called " + action.id());
    }
    action
        .key()
        .flatMap(this::withKey)
        .ifPresent(
            other -> {
              throw new IllegalArgumentException(
                  action.id() + " and " + other.id() + " share the key " + action.key().get());
            });
    byId.put(action.id(), action);
    return action;
  }

  public Action get(String id) {
    Action action = byId.get(id);
    if (action == null) {
      throw new IllegalArgumentException("No action is called " + id);
    }
    return action;
  }

  private Optional<Action> withKey(KeyCombination key) {
    return byId.values().stream().filter(a -> a.key().equals(Optional.of(key))).findFirst();
  }

  public Iterable<Action> all() {
    return byId.values();
  }
}
