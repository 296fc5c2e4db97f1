package tankyard.app.field;

import java.util.List;
import java.util.Optional;

/**
 * The model of a form: blocks of entries over one whole.
 *
 * @param <R> the whole, for example a lease
 */
public final class Form<R> {
  private final List<Block<R>> blocks;

  Form(List<Block<R>> blocks) {
    this.blocks = List.copyOf(blocks);
  }

  public List<Block<R>> blocks() {
    return blocks;
  }

  public List<Entry<R>> entries() {
    return blocks.stream().flatMap(block -> block.allEntries().stream()).toList();
  }

  public Optional<Entry<R>> entry(String id) {
    return entries().stream().filter(entry -> entry.id().equals(id)).findFirst();
  }

  /** Shows the values of this whole; what is typed and not taken yet stays. */
  public void show(R whole) {
    entries().forEach(entry -> entry.show(whole));
  }
}
