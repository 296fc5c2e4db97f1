package tankyard.app.field;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Makes the entries of one record. Ids are the record's short name and the component's name:
 * "well-box-limit".
 *
 * @param <R> the whole
 * @param <S> the record whose components are shown
 */
public final class Fields<R, S extends Record> {
  private final EntryContext<R> context;
  private final Consumer<Entry<R>> add;
  private final String prefix;
  private final Part<R, S> subject;
  private final Class<S> type;

  Fields(
      EntryContext<R> context,
      Consumer<Entry<R>> add,
      String prefix,
      Part<R, S> subject,
      Class<S> type) {
    this.context = context;
    this.add = add;
    this.prefix = prefix;
    this.subject = subject;
    this.type = type;
  }

  /** A quantity, needed or optional as the record has it. */
  public AmountEntry<R> amount(String component, String label, String why) {
    Component<S> place = new Component<>(type, component);
    return added(
        new AmountEntry<>(
            context,
            id(component),
            label,
            why,
            subject.then(Part.amount(place)),
            place.quantity(),
            place.isOptional()));
  }

  public NameEntry<R> text(String component, String label, String why) {
    return added(
        new NameEntry<>(
            context, id(component), label, why, subject.then(Part.of(type, component))));
  }

  public CountEntry<R> count(String component, String label, String why, int least, int most) {
    return added(
        new CountEntry<>(
            context,
            id(component),
            label,
            why,
            subject.then(Part.of(type, component)),
            least,
            most));
  }

  /** One of an enum's values. */
  public <E extends Enum<E>> ChoiceEntry<R, E> oneOf(
      Class<E> values, String component, String label, String why, Function<E, String> words) {
    List<E> items = Arrays.asList(values.getEnumConstants());
    return choice(component, label, why, whole -> items, words);
  }

  /** One of a list that may depend on the whole. */
  public <T> ChoiceEntry<R, T> choice(
      String component,
      String label,
      String why,
      Function<R, List<T>> items,
      Function<T, String> words) {
    return choice(component, label, why, Part.of(type, component), items, words);
  }

  /** One of a list, where choosing changes more than one component. */
  public <T> ChoiceEntry<R, T> choice(
      String component,
      String label,
      String why,
      Part<S, T> part,
      Function<R, List<T>> items,
      Function<T, String> words) {
    return added(
        new ChoiceEntry<>(context, id(component), label, why, subject.then(part), items, words));
  }

  /** The entries of a record inside this one. */
  public <U extends Record> Fields<R, U> inside(String component, String name, Class<U> inner) {
    return new Fields<>(context, add, name, subject.then(Part.<S, U>of(type, component)), inner);
  }

  /** The entries of an optional record that is there. */
  public <U extends Record> Fields<R, U> insideOptional(
      String component, String name, Class<U> inner) {
    Part<S, Optional<U>> place = Part.of(type, component);
    return new Fields<>(
        context, add, name, subject.then(place).as(Optional::orElseThrow, Optional::of), inner);
  }

  private <E extends Entry<R>> E added(E entry) {
    add.accept(entry);
    return entry;
  }

  private String id(String component) {
    return prefix + "-" + component.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
  }
}
