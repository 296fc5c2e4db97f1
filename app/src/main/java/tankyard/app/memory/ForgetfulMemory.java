package tankyard.app.memory;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Lives as long as the program. */
final class ForgetfulMemory implements Memory {
  private final Map<String, String> values = new HashMap<>();

  @Override
  public Optional<String> get(String key) {
    return Optional.ofNullable(values.get(key));
  }

  @Override
  public void put(String key, String value) {
    values.put(key, value);
  }
}
