package tankyard.app.figures;

import java.util.List;
import java.util.Optional;
import tankyard.engine.study.BreathingResult;
import tankyard.engine.study.OverflowResult;
import tankyard.engine.study.StorageResult;
import tankyard.engine.study.SwitchResult;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;

/**
 * Which results of tanks, overflows, switches and vents stand in which row, and why they matter.
 */
public final class TankRows {
  private final CaseFigures figures;

  public TankRows(CaseFigures figures) {
    this.figures = figures;
  }

  /** All oil tanks together. */
  public List<FigureRow> oilStorage() {
    return figures
        .<StorageResult>rows(c -> Optional.of(c.storage()))
        .plain(
            "Oil a day",
            "Of all wells together, over the whole day.",
            s -> Optional.of(s.oilRate()))
        .maybe(
            "Usable",
            "From the sales outlets up to the high switches: what lies below is bottoms.",
            StorageResult::oilUsable)
        .maybe(
            "Room needed",
            "One load, and what comes while the road is out.",
            StorageResult::oilNeeded)
        .maybeIn(
            Unit.DAY_UNIT,
            "Between loads",
            "How often the truck must come.",
            StorageResult::haulInterval)
        .maybeIn(
            Unit.DAY_UNIT,
            "Can wait for the road",
            "With a load still to be taken when it closes.",
            StorageResult::roadOut)
        .maybeIn(
            Unit.DAY_UNIT,
            "Full after a refused load",
            "Of several tanks the largest stands shut in until it is treated; one alone goes on"
                + " filling.",
            StorageResult::refusedLoad)
        .maybeIn(
            Unit.POUND,
            "A load weighs",
            "Ask the hauler and the county what road and bridge stand.",
            StorageResult::loadWeight)
        .rows();
  }

  /** All water tanks together. */
  public List<FigureRow> waterStorage() {
    return figures
        .<StorageResult>rows(c -> Optional.of(c.storage()))
        .plain("Water made", "Of all wells together.", s -> Optional.of(s.waterRate()))
        .maybe("Room above pump-on", "Up to the overflow's lip.", StorageResult::waterRoom)
        .maybeIn(
            Unit.HOUR,
            "Runs over after",
            "With the injection pump down and the wells running.",
            StorageResult::waterHours)
        .maybe("Pump-off to pump-on", "What one run draws down.", StorageResult::band)
        .maybeIn(Unit.HOUR, "Pump runs", "At a stretch.", StorageResult::pumpRuns)
        .maybeIn(
            Unit.HOUR, "Pump rests", "Until pump-on is reached again.", StorageResult::pumpRests)
        .maybeIn(Unit.ONE, "Starts a day", "Many wear motor and belt.", StorageResult::startsADay)
        .rows();
  }

  public List<FigureRow> overflow(String lineId) {
    Unit small = unit(Unit.INCH, Unit.MILLIMETRE);
    return figures
        .<OverflowResult>rows(
            c -> c.overflows().stream().filter(o -> o.lineId().equals(lineId)).findFirst())
        .computed(
            "Passes by gravity",
            "What runs through it by itself, venting as it goes.",
            OverflowResult::capacity)
        .plain(
            "All fluid",
            "What comes over when the dump valve is stuck shut: oil and water together.",
            r -> Optional.of(r.allFluid()))
        .number(
            small,
            "Falls",
            "From end to end, as typed or from lip to lip as drawn.",
            r -> r.fall().map(f -> f.in(small)))
        .maybeIn(
            small,
            "Must fall",
            "To carry all fluid three quarters full.",
            OverflowResult::leastFall)
        .maybeIn(
            Unit.HOUR,
            "Next tank catches",
            "Its room for all fluid: a water tank's from pump-on, an oil tank's from the outlet.",
            OverflowResult::catches)
        .rows();
  }

  /** The high switch of one tank. */
  public List<FigureRow> highSwitch(String tankId) {
    return figures
        .<SwitchResult>rows(
            c -> c.switches().stream().filter(s -> s.tankId().equals(tankId)).findFirst())
        .plain("High switch", "Where it sits above the bottom.", SwitchResult::height)
        .computed(
            "High switch at most",
            "Room below the lip for what comes until the wells stand still and the lines drain.",
            SwitchResult::highest)
        .maybeIn(
            Unit.HOUR,
            "Switch to lip",
            "Should the switch fail: time to get there before the overflow runs.",
            SwitchResult::failsIn)
        .rows();
  }

  /** What one tank breathes, and what its roof feels of it. */
  public List<FigureRow> vent(String tankId) {
    Unit ounces = unit(Unit.OUNCE_PER_SQUARE_INCH, Unit.KILOPASCAL);
    Unit air = unit(Unit.CUBIC_FOOT_PER_HOUR, Unit.STANDARD_CUBIC_METRE_PER_DAY);
    return figures
        .<BreathingResult>rows(
            c -> c.breathing().stream().filter(b -> b.tankId().equals(tankId)).findFirst())
        .maybeIn(
            air, "Draws in", "At the fastest draw, while the tank cools.", b -> Optional.of(b.in()))
        .maybeIn(
            ounces,
            "Vacuum under the roof",
            "While it draws in; its vent's maker knows better.",
            BreathingResult::vacuum)
        .maybeIn(
            air,
            "Pushes out",
            "At the fastest filling, with the heat of the day and the gas that comes in.",
            b -> Optional.of(b.out()))
        .maybeIn(
            ounces,
            "Pressure under the roof",
            "While it pushes out; its vent's maker knows better.",
            BreathingResult::pressure)
        .maybeIn(
            unit(Unit.INCH, Unit.MILLIMETRE),
            "Vent at least",
            "The clear bore that keeps the roof within what it holds.",
            BreathingResult::bore)
        .rows();
  }

  private Unit unit(Unit field, Unit metric) {
    return figures.units() == UnitSystem.METRIC ? metric : field;
  }
}
