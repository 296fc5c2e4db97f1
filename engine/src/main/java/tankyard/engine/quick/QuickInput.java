package tankyard.engine.quick;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Unit;

/**
 * One thing a quick sum takes.
 *
 * @param id as typed after two hyphens: {@code length}
 * @param title what it is, in words
 * @param bare unit of a number typed without one; empty where words are typed
 * @param usual what is taken where nothing is typed
 * @param why where the usual value comes from
 * @param example something that could be typed
 * @param needed whether it must be typed where there is no usual value
 * @param choices words that are taken; empty where anything is
 */
public record QuickInput(
    String id,
    String title,
    Optional<Unit> bare,
    Sign sign,
    Optional<String> usual,
    String why,
    String example,
    boolean needed,
    List<String> choices) {

  /** Which numbers are taken. */
  public enum Sign {
    ABOVE_ZERO,
    ZERO_OR_MORE,
    ANY
  }

  public QuickInput {
    Objects.requireNonNull(title, "title");
    if (!id.matches("[a-z][a-z0-9]*(-[a-z0-9]+)*")) {
      throw new IllegalArgumentException("\"" + id + "\" can't be typed as an input's name");
    }
    choices = List.copyOf(choices);
  }

  /** A needed amount above zero, with an example of what to type. */
  public static QuickInput amount(String id, String title, Unit bare, String example) {
    return new QuickInput(
        id,
        title,
        Optional.of(bare),
        Sign.ABOVE_ZERO,
        Optional.empty(),
        "",
        example,
        true,
        List.of());
  }

  /** One of a few words; the first is usual. */
  public static QuickInput choice(String id, String title, String why, List<String> choices) {
    String first = choices.get(0);
    return new QuickInput(
        id, title, Optional.empty(), Sign.ANY, Optional.of(first), why, first, false, choices);
  }

  /** Needed words of its own form. */
  public static QuickInput words(String id, String title, String example) {
    return new QuickInput(
        id, title, Optional.empty(), Sign.ANY, Optional.empty(), "", example, true, List.of());
  }

  /** Taken where nothing is typed, and shown as assumed. */
  public QuickInput usual(String value, String reason) {
    return new QuickInput(
        id, title, bare, sign, Optional.of(value), reason, example, false, choices);
  }

  /** May be left out, and then has no value. */
  public QuickInput optional() {
    return new QuickInput(id, title, bare, sign, usual, why, example, false, choices);
  }

  public QuickInput orZero() {
    return signed(Sign.ZERO_OR_MORE);
  }

  public QuickInput anySign() {
    return signed(Sign.ANY);
  }

  private QuickInput signed(Sign other) {
    return new QuickInput(id, title, bare, other, usual, why, example, needed, choices);
  }

  public Optional<Dimension> dimension() {
    return bare.map(Unit::dimension);
  }
}
