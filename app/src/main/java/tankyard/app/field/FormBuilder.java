package tankyard.app.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import tankyard.engine.units.Amount;
import tankyard.engine.units.Dimension;

/**
 * Puts a form together, top to bottom:
 *
 * <pre>{@code
 * FormBuilder<Lease> form = new FormBuilder<>(host, drafts, "W3", () -> "Well 3");
 * form.section("Makes each day");
 * Fields<Lease, Well> well = form.on("well", wellOf("W3"), Well.class);
 * well.amount("oil", "Oil", "From run tickets or a barrel test; lines and vessels follow it.");
 * }</pre>
 */
public final class FormBuilder<R> {
  private final EntryContext<R> context;
  private final List<Block<R>> blocks = new ArrayList<>();
  private List<Entry<R>> open = new ArrayList<>();
  private List<FormAction> actions = new ArrayList<>();
  private String title = "";

  public FormBuilder(FormHost<R> host, Drafts drafts, String subject, Supplier<String> name) {
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

  /** A quantity anywhere in the whole. */
  public AmountEntry<R> amount(
      String id,
      String label,
      String why,
      Part<R, Optional<Amount>> part,
      Dimension dimension,
      boolean optional) {
    return added(
        new AmountEntry<>(context, id, label, why, part, QuantityKind.of(dimension), optional));
  }

  /** Words anywhere in the whole. */
  public NameEntry<R> words(String id, String label, String why, Part<R, String> part) {
    return added(new NameEntry<>(context, id, label, why, part));
  }

  /** One of a list anywhere in the whole. */
  public <T> ChoiceEntry<R, T> choice(
      String id, String label, String why, Part<R, T> part, List<T> items) {
    return added(
        new ChoiceEntry<>(context, id, label, why, part, whole -> items, Object::toString));
  }

  /** A line that makes a new row. */
  public AddEntry<R> adder(
      String id,
      String label,
      String why,
      String prompt,
      Function<String, UnaryOperator<R>> reader) {
    return added(new AddEntry<>(context, id, label, why, prompt, reader));
  }

  /** A button beside the section's heading. */
  public FormBuilder<R> action(FormAction action) {
    actions.add(action);
    return this;
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
    if (!open.isEmpty() || !actions.isEmpty()) {
      blocks.add(new Section<>(title, open, actions));
    }
    open = new ArrayList<>();
    actions = new ArrayList<>();
    title = "";
  }

  private <E extends Entry<R>> E added(E entry) {
    open.add(entry);
    return entry;
  }
}
