package tankyard.app.field;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What was typed and not taken yet, by field, so that looking at another thing loses nothing. */
public final class Drafts {
  private final Map<String, String> texts = new HashMap<>();

  void keep(String key, String text) {
    texts.put(key, text);
  }

  void drop(String key) {
    texts.remove(key);
  }

  Optional<String> of(String key) {
    return Optional.ofNullable(texts.get(key));
  }
}
