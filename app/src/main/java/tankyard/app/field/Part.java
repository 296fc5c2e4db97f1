package tankyard.app.field;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import tankyard.engine.units.Amount;
import tankyard.engine.units.Quantity;

/**
 * The place of one value in a tree of records: how to read it, and how to get the tree with another
 * value there.
 *
 * @param get throws where the place is gone, for example after a delete
 */
public record Part<R, T>(Function<R, T> get, BiFunction<R, T, R> with) {

  public T in(R whole) {
    return get.apply(whole);
  }

  public R with(R whole, T value) {
    return with.apply(whole, value);
  }

  /** The part of a part. */
  public <U> Part<R, U> then(Part<T, U> inner) {
    return new Part<>(
        whole -> inner.in(in(whole)), (whole, u) -> with(whole, inner.with(in(whole), u)));
  }

  /** The same place, its value seen another way. */
  public <U> Part<R, U> as(Function<T, U> there, Function<U, T> back) {
    return new Part<>(whole -> there.apply(in(whole)), (whole, u) -> with(whole, back.apply(u)));
  }

  /** One item of a list, by its position. */
  public static <I> Part<List<I>, I> item(int index) {
    return new Part<>(
        list -> list.get(index),
        (list, item) -> {
          List<I> changed = new java.util.ArrayList<>(list);
          changed.set(index, item);
          return List.copyOf(changed);
        });
  }

  /** A component of a record, by its name. */
  public static <R extends Record, T> Part<R, T> of(Class<R> owner, String component) {
    return new Component<R>(owner, component).part();
  }

  /** The record with another value in one component. */
  @SuppressWarnings("unchecked")
  public static <R extends Record> R put(R record, String component, Object value) {
    return new Component<>((Class<R>) record.getClass(), component)
        .<Object>part()
        .with(record, value);
  }

  /** A component that holds a quantity or perhaps a quantity, as the amount that was typed. */
  static <R extends Record> Part<R, Optional<Amount>> amount(Component<R> component) {
    QuantityKind kind = component.quantity();
    if (component.isOptional()) {
      return component
          .<Optional<Quantity>>part()
          .as(q -> q.map(Quantity::typed), a -> a.map(kind::quantity));
    }
    return component
        .<Quantity>part()
        .as(q -> Optional.of(q.typed()), a -> kind.quantity(a.orElseThrow()));
  }
}
