package tankyard.engine.vessels;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** How long a layer of a separator holds what comes: its volume over its rate. */
public final class Retention {
  private static final Source SOURCE = Source.definition("volume over rate");

  private Retention() {}

  /** The time a layer holds its liquid; the rate must be above zero. */
  public static Computed<Time> of(Volume layer, LiquidRate rate) {
    if (rate.cubicMetresPerSecond() == 0) {
      throw new IllegalArgumentException("Nothing flows: there is no retention time");
    }
    return Computed.of(
        Time.ofMinutes(1440 * layer.toBarrels() / rate.toBarrelsPerDay()),
        () ->
            Working.of(
                "Retention time",
                "t",
                "1440*V/Q",
                Unit.MINUTE,
                SOURCE,
                Term.of("V", "volume of the layer", layer, Unit.BARREL),
                Term.of("Q", "rate", rate, Unit.BARREL_PER_DAY)));
  }

  /** The same, with the working of the volume before it. */
  public static Computed<Time> of(Computed<Volume> layer, LiquidRate rate) {
    Computed<Time> time = of(layer.value(), rate);
    return Computed.of(time.value(), () -> time.working().from(List.of(layer.working())))
        .with(layer.cautions());
  }

  /**
   * What to aim for in a three-phase separator: API Spec 12J (1989) appendix C, from memory.
   *
   * @param lowest minutes at the easy end
   * @param highest minutes at the hard end
   */
  public record Guide(double lowest, double highest, List<Caution> cautions) {
    public static final Source SOURCE =
        Source.memory("API Spec 12J, 7th ed. 1989, appendix C: retention guide");

    public Guide {
      cautions = List.copyOf(cautions);
    }

    public static Guide of(Gravity oil, Temperature temperature) {
      double fahrenheit = temperature.toFahrenheit();
      if (oil.toApi() >= 35) {
        return new Guide(3, 5, List.of());
      }
      if (fahrenheit >= 100) {
        return new Guide(5, 10, List.of());
      }
      if (fahrenheit >= 80) {
        return new Guide(10, 20, List.of());
      }
      List<Caution> cold = new ArrayList<>();
      if (fahrenheit < 60) {
        cold.add(
            new Caution(
                "retention-guide-cold",
                Figures.significant(fahrenheit, 3)
                    + " °F is colder than the guide's 60 °F: expect to need more than 30 minutes,"
                    + " or heat."));
      }
      return new Guide(20, 30, cold);
    }
  }
}
