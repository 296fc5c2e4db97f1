package tankyard.engine.vessels;

import java.util.List;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * The water leg of a gun barrel. Vessel and leg are open to the same air, so a column of oil over
 * water inside stands in balance with a column of water in the leg; what the leg loses in friction
 * pushes the interface up.
 *
 * @param oilOutlet height of the oil outlet above the bottom
 * @param oil gravity of the oil inside
 * @param brine gravity of the water inside and in the leg
 * @param loss head lost in the leg, in feet of its water; zero at rest
 */
public record GunBarrelLeg(Length oilOutlet, Gravity oil, Gravity brine, Length loss) {
  private static final double SLIP_FEET = 1e-9;
  private static final Source BALANCE =
      Source.definition("columns in balance, same air above both");

  public GunBarrelLeg {
    if (!(oil.specific() < brine.specific())) {
      throw new IllegalArgumentException(
          "Oil of "
              + Figures.significant(oil.specific(), 4)
              + " SG does not float on water of "
              + Figures.significant(brine.specific(), 4)
              + " SG");
    }
  }

  /** How high the weir of the leg must stand so that the interface does. */
  public Computed<Length> weirFor(Length interfaceHeight) {
    requireInside(interfaceHeight);
    double weir =
        interfaceHeight.toFeet()
            + (oilOutlet.toFeet() - interfaceHeight.toFeet()) * ratio()
            - loss.toFeet();
    return Computed.of(
        Length.ofFeet(weir),
        () ->
            Working.of(
                "Height of the water leg's weir",
                "hw",
                "hi+(ho-hi)*SGo/SGw-hl",
                Unit.FOOT,
                BALANCE,
                Term.of("hi", "interface", interfaceHeight, Unit.FOOT),
                Term.of("ho", "oil outlet", oilOutlet, Unit.FOOT),
                Term.of("SGo", "gravity of the oil", oil, Unit.SPECIFIC_GRAVITY),
                Term.of("SGw", "gravity of the water", brine, Unit.SPECIFIC_GRAVITY),
                Term.of("hl", "lost in the leg", loss, Unit.FOOT)));
  }

  /** Where the interface stands with a leg already cut. */
  public Computed<Length> interfaceFor(Length weir) {
    double height = (weir.toFeet() + loss.toFeet() - oilOutlet.toFeet() * ratio()) / (1 - ratio());
    double kept = Math.min(Math.max(height, 0), oilOutlet.toFeet());
    return Computed.of(
            Length.ofFeet(kept),
            () ->
                Working.of(
                    "Height of the interface",
                    "hi",
                    "max(0,min(ho,(hw+hl-ho*SGo/SGw)/(1-SGo/SGw)))",
                    Unit.FOOT,
                    BALANCE,
                    Term.of("hw", "weir of the leg", weir, Unit.FOOT),
                    Term.of("hl", "lost in the leg", loss, Unit.FOOT),
                    Term.of("ho", "oil outlet", oilOutlet, Unit.FOOT),
                    Term.of("SGo", "gravity of the oil", oil, Unit.SPECIFIC_GRAVITY),
                    Term.of("SGw", "gravity of the water", brine, Unit.SPECIFIC_GRAVITY)))
        .with(outside(height));
  }

  /** How far the interface moves for each unit the weir moves. */
  public double touchiness() {
    return 1 / (1 - ratio());
  }

  /** How far the interface moves for an inch of weir. */
  public Computed<Length> interfaceForAnInch() {
    Length inch = Length.ofInches(1);
    return Computed.of(
        Length.ofFeet(inch.toFeet() * touchiness()),
        () ->
            Working.of(
                "How far the interface moves for an inch of weir",
                "m",
                "a/(1-SGo/SGw)",
                Unit.FOOT,
                BALANCE,
                Term.of("a", "an inch", inch, Unit.FOOT),
                Term.of("SGo", "gravity of the oil", oil, Unit.SPECIFIC_GRAVITY),
                Term.of("SGw", "gravity of the water", brine, Unit.SPECIFIC_GRAVITY)));
  }

  private double ratio() {
    return oil.specific() / brine.specific();
  }

  private void requireInside(Length interfaceHeight) {
    if (interfaceHeight.metres() > oilOutlet.metres()) {
      throw new IllegalArgumentException(
          "The interface at "
              + Figures.significant(interfaceHeight.toFeet(), 4)
              + " ft can't stand above the oil outlet at "
              + Figures.significant(oilOutlet.toFeet(), 4)
              + " ft");
    }
  }

  private List<Caution> outside(double height) {
    if (height >= -SLIP_FEET && height <= oilOutlet.toFeet() + SLIP_FEET) {
      return List.of();
    }
    String words =
        height < 0
            ? "The leg is cut so low that oil runs out through it: raise the weir."
            : "The leg is cut so high that water goes over with the oil: lower the weir.";
    return List.of(new Caution("interface-outside-vessel", words));
  }
}
