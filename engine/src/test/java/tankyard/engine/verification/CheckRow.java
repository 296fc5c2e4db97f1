package tankyard.engine.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;

/**
 * One number of an example.
 *
 * @param published the outside number; none in a pinned row
 * @param expected what ours must be where the published number is wrong, or what is pinned
 */
public record CheckRow(
    CheckExample example,
    String key,
    String what,
    Kind kind,
    OptionalDouble published,
    OptionalDouble expected,
    String unit,
    double tolerance) {

  /** What a row claims. */
  public enum Kind {
    /** The published number is right, within the tolerance. */
    CHECKED,
    /** The published number is known to be wrong; the expected one is right. */
    CORRECTED,
    /** Nobody published it: our number is pinned so that a change calls a person. */
    PINNED
  }

  public CheckRow {
    boolean needsPublished = kind != Kind.PINNED;
    boolean needsExpected = kind != Kind.CHECKED;
    if (published.isPresent() != needsPublished || expected.isPresent() != needsExpected) {
      throw new IllegalArgumentException(
          example.id() + " " + key + " has not the numbers of a " + kind + " row");
    }
    if (!(tolerance > 0)) {
      throw new IllegalArgumentException(example.id() + " " + key + " has no tolerance");
    }
  }

  public String id() {
    return example.id() + " " + key;
  }

  /** The number ours is held against. */
  public double target() {
    return kind == Kind.CHECKED ? published.getAsDouble() : expected.getAsDouble();
  }

  void requireHolds(double ours) {
    assertThat(ours).as(id()).isCloseTo(target(), within(tolerance));
    if (kind == Kind.CORRECTED) {
      assertThat(Math.abs(ours - published.getAsDouble()))
          .as("%s is listed as wrong in print, so ours must differ from it", id())
          .isGreaterThan(tolerance);
    }
  }
}
