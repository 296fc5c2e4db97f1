package tankyard.app.figures;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Thing;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.InjectionResult;
import tankyard.engine.study.Restart;
import tankyard.engine.study.SeparatorResult;
import tankyard.engine.study.SharedWell;
import tankyard.engine.study.SuctionResult;
import tankyard.engine.study.TreaterResult;
import tankyard.engine.study.VesselGas;
import tankyard.engine.study.WellResult;
import tankyard.engine.units.Unit;

/** Which results stand in which row, with the reason why they matter; lines have a class apart. */
public final class ResultRows {
  private final CaseFigures figures;

  public ResultRows(CaseFigures figures) {
    this.figures = figures;
  }

  public List<FigureRow> well(String id) {
    return figures
        .<WellResult>rows(c -> c.well(id))
        .computed(
            "At the stuffing box",
            "With the regulator at its setting and all that runs with this well running.",
            WellResult::box)
        .plain("of it static", "Height, and the oil above the inlet.", r -> Optional.of(r.lift()))
        .plain("of it friction", "Lost in the lines on the way.", r -> Optional.of(r.friction()))
        .plain("Stuffing box stands", "As typed above.", WellResult::limit)
        .maybe(
            "To start again cold",
            "At the box, once its lines stood below the oil's pour point and gelled.",
            r -> r.restart().map(Restart::highest))
        .plain(
            "Rate while running",
            "All fluid: the day's barrels come in the hours it runs.",
            r -> Optional.of(r.rate()))
        .words("Goes to", "Where its fluid ends up.", r -> Optional.of(name(r.separatorId())))
        .rows();
  }

  public List<FigureRow> separator(String id) {
    return figures
        .<SeparatorResult>rows(c -> c.separator(id))
        .maybeIn(
            Unit.MINUTE,
            "Oil stays",
            "How long the oil stands above the water: time for the water to drop out of it.",
            SeparatorResult::oilMinutes)
        .maybeIn(
            Unit.MINUTE,
            "Water stays",
            "How long the water stands below the oil: time for the oil to rise out of it.",
            SeparatorResult::waterMinutes)
        .maybeIn(
            Unit.MILLIMETRE,
            "Smallest water drop",
            "Of those that fall out of the oil before it leaves; 0.5 mm is what is usually asked.",
            SeparatorResult::waterDrops)
        .maybeIn(
            Unit.MILLIMETRE,
            "Smallest oil drop",
            "Of those that rise out of the water before it leaves; 0.2 mm is what is usually asked.",
            SeparatorResult::oilDrops)
        .plain(
            "Oil comes in",
            "At the rate of the case: after a power cut that of wells running.",
            r -> Optional.of(r.oil()))
        .plain(
            "Water comes in",
            "At the rate of the case: after a power cut that of wells running.",
            r -> Optional.of(r.water()))
        .computed(
            "Water leg sized for",
            "Peaks pass the day's average, so that is doubled; with all wells on it is the peak itself.",
            SeparatorResult::designWater)
        .maybe(
            "Gas, of volume",
            "Its part of what comes in at the gauge's reading. Above 1 % the vessel can't be counted"
                + " as full of liquid.",
            r -> r.gas().map(VesselGas::part))
        .maybeIn(
            Unit.INCH,
            "Gas section, bore",
            "An upright section or boot at least so wide lets the drops fall back.",
            r -> r.gas().map(VesselGas::section))
        .rows();
  }

  public List<FigureRow> gunBarrel(String id) {
    return GunBarrelRows.of(figures, id);
  }

  public List<FigureRow> pump(String id) {
    return figures
        .<InjectionResult>rows(c -> injection(c, id))
        .plain("Pumps", "The rate while it runs.", r -> Optional.of(r.rate()))
        .computed(
            "Runs a day",
            "To put the day's water away; 12 to 20 hours leave room for repairs and growth.",
            InjectionResult::hours)
        .computed(
            "At the wellhead",
            "Follows the rate while it runs and not the day's average: a permit limits this.",
            InjectionResult::wellhead)
        .computed(
            "At the pump",
            "What its discharge gauge shows while it runs.",
            InjectionResult::discharge)
        .plain("Lost in the line", "Friction between the two.", r -> Optional.of(r.lineLoss()))
        .maybe(
            "Red line on the pump's gauge",
            "There the wellhead is at its permit, or at the screening form where none is typed.",
            InjectionResult::redLine)
        .computed("Power at the shaft", "The motor must give it.", InjectionResult::power)
        .words("Into", "The well nearest its limit.", r -> Optional.of(name(r.wellId())))
        .rows();
  }

  /** A heater-treater, if there were one. */
  public List<FigureRow> treater() {
    return figures
        .<TreaterResult>rows(CaseResult::treater)
        .maybeIn(
            Unit.BTU_PER_HOUR,
            "Treater's burner",
            "If there were one, most of the water knocked out before it.",
            t -> Optional.of(t.duty()))
        .computed("Gas it burns", "Lease gas at 1,000 Btu a cubic foot.", TreaterResult::gas)
        .maybeIn(
            Unit.GALLON,
            "Or propane a month",
            "Of 30 days, where there is no gas.",
            t -> Optional.of(t.propane()))
        .maybeIn(
            Unit.GALLON,
            "Propane a barrel sold",
            "Against what the barrel brings.",
            TreaterResult::propaneABarrel)
        .maybeIn(
            Unit.BTU_PER_HOUR,
            "Burner with all its water",
            "What it saves to knock the water out first.",
            t -> Optional.of(t.dutyWithWater()))
        .rows();
  }

  /** What drives the water into a pump; nothing where no suction line is drawn. */
  public List<FigureRow> suction(String pumpId) {
    return figures
        .<SuctionResult>rows(
            c -> c.suctions().stream().filter(s -> s.pumpId().equals(pumpId)).findFirst())
        .computed(
            "Head left at the suction",
            "With its tank drawn down to pump-off; its maker says how much it needs.",
            SuctionResult::available)
        .plain("Water over the suction", "At pump-off.", s -> Optional.of(s.level()))
        .maybe(
            "Lowest it may stand",
            "Over the suction: below it the pump gets less than its maker asks for.",
            SuctionResult::lowest)
        .plain("Lost in the suction line", "Friction.", s -> Optional.of(s.friction()))
        .computed(
            "Acceleration head",
            "Lost in speeding the line's water up at every stroke.",
            SuctionResult::acceleration)
        .rows();
  }

  public List<FigureRow> injectionWell(String id) {
    return figures
        .<InjectionResult>rows(
            c -> c.injections().stream().filter(i -> i.wellId().equals(id)).findFirst())
        .computed(
            "At the wellhead",
            "While the pump runs: a permit limits this.",
            InjectionResult::wellhead)
        .plain(
            "Goes in", "Its part of the pump's rate while it runs.", r -> Optional.of(r.intoWell()))
        .maybe("Limit", "The permit, or the screening form for its depth.", InjectionResult::limit)
        .computed("Hours a day", "The pump must run.", InjectionResult::hours)
        .rows();
  }

  /** An injection well that another lease pumps into as well. */
  public List<FigureRow> sharedWell(String id) {
    return figures
        .<SharedWell>rows(
            c -> c.sharedWells().stream().filter(w -> w.wellId().equals(id)).findFirst())
        .computed("Both pump, wellhead", "A permit limits this too.", SharedWell::bothOn)
        .computed("Must run at once", "A day, however they take turns.", SharedWell::mustOverlap)
        .computed("Run at once by chance", "A day, if neither knows.", SharedWell::byChance)
        .computed("Both, over the day", "What the permit's barrels count.", SharedWell::together)
        .rows();
  }

  private static Optional<InjectionResult> injection(CaseResult c, String pumpId) {
    return c.injections().stream()
        .filter(i -> i.pumpId().equals(pumpId))
        .min(
            Comparator.comparingDouble(
                i -> i.redLine().map(r -> r.value().toPsi()).orElse(Double.MAX_VALUE)));
  }

  private String name(String id) {
    Lease lease = figures.answer().lease();
    return lease.thing(id).map(Thing::name).orElse(id);
  }
}
