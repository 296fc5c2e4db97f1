package tankyard.app.field;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A component of a record, found by its name. The lease's records have up to nineteen components; a
 * hand-written "with" for each would be a thousand lines that say nothing.
 */
final class Component<R extends Record> {
  private final Class<R> owner;
  private final RecordComponent[] all;
  private final int index;

  Component(Class<R> owner, String name) {
    this.owner = owner;
    this.all = owner.getRecordComponents();
    this.index =
        IntStream.range(0, all.length)
            .filter(i -> all[i].getName().equals(name))
            .findFirst()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        owner.getSimpleName()
                            + " has no component \""
                            + name
                            + "\"; it has "
                            + Arrays.stream(all).map(RecordComponent::getName).toList()));
  }

  boolean isOptional() {
    return all[index].getType().equals(Optional.class);
  }

  QuantityKind quantity() {
    return QuantityKind.of(held());
  }

  /** The component's class, or what is inside where it is optional. */
  Class<?> held() {
    if (!isOptional()) {
      return all[index].getType();
    }
    Type inside = ((ParameterizedType) all[index].getGenericType()).getActualTypeArguments()[0];
    return (Class<?>) inside;
  }

  /** The caller names the component's type; a wrong one fails at the first read. */
  @SuppressWarnings("unchecked")
  <T> Part<R, T> part() {
    return new Part<>(whole -> (T) read(whole, index), this::with);
  }

  private R with(R whole, Object value) {
    Object[] values = new Object[all.length];
    for (int i = 0; i < all.length; i++) {
      values[i] = i == index ? value : read(whole, i);
    }
    return make(values);
  }

  private Object read(R whole, int i) {
    try {
      return all[i].getAccessor().invoke(whole);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException(owner + " can't be read", e);
    }
  }

  private R make(Object[] values) {
    try {
      Class<?>[] types = Arrays.stream(all).map(RecordComponent::getType).toArray(Class<?>[]::new);
      Constructor<R> constructor = owner.getDeclaredConstructor(types);
      return constructor.newInstance(values);
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof IllegalArgumentException refused) {
        throw refused; // the record's own check, in words for the reader
      }
      throw new IllegalStateException(owner + " can't be made", e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(owner + " can't be made", e);
    }
  }
}
