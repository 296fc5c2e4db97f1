package tankyard.app.field;

import java.util.ArrayList;
import java.util.List;

/**
 * Puts a form together, top to bottom:
 *
 * <pre>{@code
 * FormBuilder<Lease> form = new FormBuilder<>(host, drafts, "well-3", "Well 3");
 * form.section("Makes each day");
 * Fields<Lease, Well> well = form.on("well", wellOf("well-3"), Well.class);
 * well.amount("oil", "Oil", "From run tickets or a barrel test; lines and vessels follow it.");
 * }</pre>
 */
public final class FormBuilder<R> {
  private final EntryContext<R> context;
  private final List<Block<R>> blocks = new ArrayList<>();
  private List<Entry<R>> open = new ArrayList<>();
  private String title = "";

  public FormBuilder(FormHost<R> host, Drafts drafts, String subject, String name) {
    context = new EntryContext<>(host, drafts, subject, name);
  }

  /** Starts a section; what follows goes into it. */
  public FormBuilder<R> section(String heading) {
    close();
    title = heading;
    return this;
  }

  /** Entries for the components of a record. */
  public <S extends Record> Fields<R, S> on(String prefix, Part<R, S> subject, Class<S> type) {
    return new Fields<>(context, entry -> open.add(entry), prefix, subject, type);
  }

  /** Starts a small table. */
  public RowsBuilder<R> rows(String id, String heading, String... columns) {
    close();
    return new RowsBuilder<>(context, id, heading, List.of(columns), blocks::add);
  }

  public Form<R> build() {
    close();
    return new Form<>(blocks);
  }

  private void close() {
    if (!open.isEmpty()) {
      blocks.add(new Section<>(title, open));
    }
    open = new ArrayList<>();
    title = "";
  }
}
