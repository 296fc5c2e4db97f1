package tankyard.app.picture;

import java.util.function.Consumer;
import tankyard.app.Studio;

/**
 * One picture to be taken. Where a step opens a second window, that one is taken.
 *
 * @param first what a person does before
 * @param then what the person does next, once the window has shown the first
 */
record Shot(String name, Consumer<Studio> first, Consumer<Studio> then) {
  Shot(String name, Consumer<Studio> first) {
    this(name, first, s -> {});
  }
}
