package tankyard.engine.quick;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import tankyard.engine.units.Amount;
import tankyard.engine.units.Area;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;

/** What was typed for one quick sum, read and checked. */
public final class QuickValues {
  private final Map<String, QuickValue> values = new LinkedHashMap<>();

  private QuickValues() {}

  /**
   * Reads what was typed; usual values fill the gaps.
   *
   * @throws QuickInputException naming the input, what was found and what is taken
   */
  public static QuickValues read(QuickSum sum, Map<String, String> typed) {
    QuickValues read = new QuickValues();
    for (String id : typed.keySet()) {
      if (sum.inputs().stream().noneMatch(i -> i.id().equals(id))) {
        throw new QuickInputException(
            sum.id()
                + " has no input --"
                + id
                + "; it takes "
                + String.join(", ", sum.inputs().stream().map(i -> "--" + i.id()).toList())
                + ".");
      }
    }
    for (QuickInput input : sum.inputs()) {
      QuickValue.read(input, typed.get(input.id())).ifPresent(v -> read.values.put(input.id(), v));
    }
    return read;
  }

  /** Every value in the order of the inputs. */
  public Iterable<QuickValue> all() {
    return values.values();
  }

  public boolean has(String id) {
    return values.containsKey(id);
  }

  public String words(String id) {
    return value(id).text();
  }

  public double number(String id) {
    return amount(id).in(Unit.ONE);
  }

  public Length length(String id) {
    return quantity(id, Length::new);
  }

  public Elevation elevation(String id) {
    return quantity(id, Elevation::new);
  }

  public Area area(String id) {
    return quantity(id, Area::new);
  }

  public Volume volume(String id) {
    return quantity(id, Volume::new);
  }

  public LiquidRate rate(String id) {
    return quantity(id, LiquidRate::new);
  }

  public Pressure pressure(String id) {
    return quantity(id, Pressure::new);
  }

  public Temperature temperature(String id) {
    return quantity(id, Temperature::new);
  }

  public Gravity gravity(String id) {
    return quantity(id, Gravity::new);
  }

  public Fraction fraction(String id) {
    return quantity(id, Fraction::new);
  }

  /** Any other kind of quantity. */
  public <Q> Q quantity(String id, Function<Amount, Q> kind) {
    try {
      return kind.apply(amount(id));
    } catch (QuickInputException e) {
      throw e;
    } catch (IllegalArgumentException e) {
      throw new QuickInputException("--" + id + ": " + e.getMessage(), e);
    }
  }

  private Amount amount(String id) {
    return value(id)
        .amount()
        .orElseThrow(() -> new IllegalStateException(id + " is words, not an amount"));
  }

  private QuickValue value(String id) {
    QuickValue value = values.get(id);
    if (value == null) {
      throw new IllegalStateException(id + " was not asked for or not typed");
    }
    return value;
  }
}
