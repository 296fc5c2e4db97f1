package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickInputException;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.vessels.LyingVessel;
import tankyard.engine.vessels.Retention;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** Minutes the layers of a liquid-full lying separator hold. */
final class RetentionSum implements QuickSum {
  @Override
  public String id() {
    return "retention";
  }

  @Override
  public String title() {
    return "Retention in a lying separator";
  }

  @Override
  public String about() {
    return "Liquid-full: water below the interface, oil above it, each over its rate. Use the rate"
        + " with all wells on, not the day's average. With a gravity: the API 12J guide beside it.";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        VesselInputs.diameter(),
        VesselInputs.length(),
        amount("interface", "height of the interface above the bottom", Unit.INCH, "15 in"),
        amount("oil-rate", "oil", Unit.BARREL_PER_DAY, "24 bbl/d"),
        amount("water-rate", "water", Unit.BARREL_PER_DAY, "300 bbl/d"),
        VesselInputs.heads(),
        VesselInputs.coneDepth(),
        amount("gravity", "gravity of the oil, for the guide", Unit.DEGREE_API, "36 API")
            .optional(),
        LiquidInputs.temperature());
  }

  @Override
  public QuickResult compute(QuickValues in) {
    LyingVessel vessel = VesselInputs.read(in);
    Length level = VesselInputs.height(in, "interface", vessel);
    Computed<Volume> water = vessel.below(level);
    Computed<Volume> all = vessel.below(Length.of(vessel.heightM(), Unit.METRE));
    Computed<Volume> oil = above(all, water);
    if (!(oil.value().cubicMetres() > 0)) {
      throw new QuickInputException(
          "--interface: at " + in.words("interface") + " the vessel has no room for oil.");
    }
    return QuickResult.of(
            new QuickAnswer(
                "oil", "Oil stays", Retention.of(oil, in.rate("oil-rate")), Unit.MINUTE),
            new QuickAnswer(
                "water", "Water stays", Retention.of(water, in.rate("water-rate")), Unit.MINUTE),
            new QuickAnswer("oil-volume", "Oil layer", oil, Unit.BARREL),
            new QuickAnswer("water-volume", "Water layer", water, Unit.BARREL))
        .saying(guide(in));
  }

  private static Computed<Volume> above(Computed<Volume> all, Computed<Volume> below) {
    double barrels = Math.max(0, all.value().toBarrels() - below.value().toBarrels());
    return Computed.of(
        Volume.ofBarrels(barrels),
        () ->
            Working.of(
                    "Oil above the interface",
                    "Vo",
                    "V-Vw",
                    Unit.BARREL,
                    Source.definition("what is left above the water"),
                    Term.of("V", "full vessel", all.value(), Unit.BARREL),
                    Term.of("Vw", "water", below.value(), Unit.BARREL))
                .from(List.of(all.working(), below.working())));
  }

  private static List<Caution> guide(QuickValues in) {
    if (!in.has("gravity")) {
      return List.of();
    }
    Retention.Guide guide =
        Retention.Guide.of(in.gravity("gravity"), in.temperature("temperature"));
    List<Caution> said = new ArrayList<>(guide.cautions());
    said.add(
        new Caution(
            "retention-guide",
            "Aim for "
                + Figures.significant(guide.lowest(), 3)
                + " to "
                + Figures.significant(guide.highest(), 3)
                + " minutes each ("
                + Retention.Guide.SOURCE.line()
                + ")."));
    return said;
  }
}
