package tankyard.app.memory;

import java.util.Optional;

/** A few choices that outlive the window: its size, light or dark, the files opened last. */
public interface Memory {
  Optional<String> get(String key);

  void put(String key, String value);

  /** Remembers nothing beyond the program's end: for tests and where no folder can be written. */
  static Memory forgetful() {
    return new ForgetfulMemory();
  }
}
