package tankyard.app.example;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import tankyard.engine.cures.CureBook;
import tankyard.engine.cures.CureResult;
import tankyard.engine.cures.TankLevels;
import tankyard.engine.cures.TankReach;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;

/** What would help the small lease, made up. */
public final class SmallCures {
  private SmallCures() {}

  public static List<CureBook> books() {
    return books(
        new TankLevels(
            "WT1",
            "Water tank",
            false,
            Pressure.ofPsi(14.5),
            List.of(
                new TankLevels.AtLevel("half full", Length.ofFeet(7), Pressure.ofPsi(11.2), false)),
            Optional.empty()));
  }

  /** The same behind a hill. */
  public static List<CureBook> heldByTheCrest() {
    return books(
        new TankLevels(
            "WT1",
            "Water tank",
            false,
            Pressure.ofPsi(14.5),
            List.of(new TankLevels.AtLevel("full", Length.ofFeet(14), Pressure.ofPsi(14.5), true)),
            Optional.of("the crest 126 ft out on Line 6")));
  }

  private static List<CureBook> books(TankLevels levels) {
    return List.of(
        new CureBook(
            "S1",
            "Separator 1",
            Optional.of(Pressure.ofPsi(14.5)),
            Optional.of(Pressure.ofPsi(26)),
            Optional.of(Pressure.ofPsi(10)),
            2,
            List.of(
                cure(
                    "bigger-leg",
                    "L6",
                    "Line 6 in 3-in poly",
                    "",
                    2.1,
                    1240,
                    CureResult.Billing.ALL),
                cure(
                    "deeper-trench",
                    "L6",
                    "the trench of Line 6 3 ft deeper at the crest",
                    "Deeper digging comes on top.",
                    1.4,
                    0,
                    CureResult.Billing.PART)),
            List.of("A transfer pump behind a separator at low pressure: 11.4 psi."),
            List.of(
                new TankReach(
                    "poly-2",
                    "2-in poly",
                    Pressure.ofPsi(16),
                    List.of(
                        new TankReach.AtRate(
                            Fraction.ofRatio(1),
                            LiquidRate.ofBarrelsPerDay(150),
                            Optional.of(Length.ofFeet(4723)))),
                    List.of(),
                    Pressure.ofPsi(0),
                    Optional.empty())),
            Optional.of(levels),
            "USD"));
  }

  private static CureResult cure(
      String id,
      String thing,
      String words,
      String care,
      double gained,
      long cost,
      CureResult.Billing billing) {
    return new CureResult(
        id,
        thing,
        words,
        care,
        Optional.of(Pressure.ofPsi(14.5 - gained)),
        Optional.of(Pressure.ofPsi(26)),
        Optional.of(Pressure.ofPsi(10 + gained)),
        Pressure.ofPsi(gained),
        1,
        BigDecimal.valueOf(cost),
        0,
        billing);
  }
}
