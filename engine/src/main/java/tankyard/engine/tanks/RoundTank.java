package tankyard.engine.tanks;

import java.util.List;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * An upright round tank by its diameter. The trade's 0.1399 D^2 barrels per foot is {@code pi/4 D^2
 * / 5.614583}; wall thickness is ignored (about half a per cent).
 */
public record RoundTank(Length diameter) {
  private static final Source GEOMETRY = Source.definition("round tank, 5.614583 ft³ per barrel");

  public RoundTank {
    if (!(diameter.metres() > 0)) {
      throw new IllegalArgumentException("A tank needs a diameter above zero");
    }
  }

  public double areaM2() {
    return Math.PI / 4 * diameter.metres() * diameter.metres();
  }

  /** What one foot of it holds. */
  public Computed<Volume> barrelsPerFoot() {
    return between("Barrels in one foot of the tank", Length.ofFeet(0), Length.ofFeet(1));
  }

  /** What it holds between two heights above its bottom; the usable volume of a stock tank. */
  public Computed<Volume> between(Length low, Length high) {
    return between("Volume between two heights of the tank", low, high);
  }

  private Computed<Volume> between(String title, Length low, Length high) {
    if (high.metres() < low.metres()) {
      throw new IllegalArgumentException(
          "The upper height, "
              + high.toFeet()
              + " ft, lies below the lower, "
              + low.toFeet()
              + " ft");
    }
    double cubicMetres = areaM2() * (high.metres() - low.metres());
    return Computed.of(
        Volume.ofBarrels(Unit.BARREL.fromSi(cubicMetres)),
        () ->
            Working.of(
                title,
                "V",
                "pi/4*D^2/5.614583*(h2-h1)",
                Unit.BARREL,
                GEOMETRY,
                Term.of("D", "diameter", diameter, Unit.FOOT),
                Term.of("h2", "upper height", high, Unit.FOOT),
                Term.of("h1", "lower height", low, Unit.FOOT)));
  }

  /** The same, with the working of the volume before it. */
  public static Computed<Time> lasts(Computed<Volume> room, LiquidRate rate) {
    Computed<Time> time = lasts(room.value(), rate);
    return Computed.of(time.value(), () -> time.working().from(List.of(room.working())))
        .with(room.cautions());
  }

  /** How long a room lasts at a rate. */
  public static Computed<Time> lasts(Volume room, LiquidRate rate) {
    if (rate.cubicMetresPerSecond() == 0) {
      throw new IllegalArgumentException("Nothing flows: the room lasts for ever");
    }
    return Computed.of(
        Time.ofHours(24 * room.toBarrels() / rate.toBarrelsPerDay()),
        () ->
            Working.of(
                "How long the room lasts",
                "t",
                "24*V/Q",
                Unit.HOUR,
                Source.definition("volume over rate"),
                Term.of("V", "room", room, Unit.BARREL),
                Term.of("Q", "rate", rate, Unit.BARREL_PER_DAY)));
  }
}
