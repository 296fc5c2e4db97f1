package tankyard.engine.lease;

import java.util.Objects;
import java.util.Optional;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;

/**
 * The wire from the nearest power pole to a motor.
 *
 * @param length of the run, one way; as far as the map says if not typed
 */
public record Wire(Gauge gauge, Metal metal, Optional<Length> length) {
  public Wire {
    Objects.requireNonNull(gauge, "gauge");
    Objects.requireNonNull(metal, "metal");
  }

  /** One way: as typed, or as far as the map says, a foot at least. */
  public Length run(MapPoint pole, MapPoint motor) {
    return length.orElseGet(
        () -> Length.ofFeet(Math.max(1, Unit.FOOT.fromSi(pole.metresTo(motor)))));
  }

  /** What it is made of. */
  public enum Metal {
    COPPER("copper"),
    ALUMINIUM("aluminium");

    private final String words;

    Metal(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** American wire gauges that are strung or buried on a lease, thin ones first. */
  public enum Gauge {
    AWG_14(14),
    AWG_12(12),
    AWG_10(10),
    AWG_8(8),
    AWG_6(6),
    AWG_4(4),
    AWG_2(2),
    AWG_1(1),
    AWG_1_0(0),
    AWG_2_0(-1),
    AWG_3_0(-2),
    AWG_4_0(-3);

    private final int number;

    Gauge(int number) {
      this.number = number;
    }

    /** 4 is #4, 0 is 1/0, -3 is 4/0. */
    public int number() {
      return number;
    }

    /** As it is asked for: "#4", "1/0". */
    public String words() {
      return number > 0 ? "#" + number : (1 - number) + "/0";
    }
  }

  /** For example "#4 aluminium". */
  public String words() {
    return gauge.words() + " " + metal.words();
  }
}
