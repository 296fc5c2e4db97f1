package tankyard.app.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import tankyard.engine.lease.Service;
import tankyard.engine.study.GunBarrelFall;
import tankyard.engine.study.GunBarrelResult;
import tankyard.engine.units.Unit;

/** Which results of a gun barrel stand in which row, with the reason why they matter. */
public final class GunBarrelRows {
  private final CaseFigures figures;
  private final String id;

  private GunBarrelRows(CaseFigures figures, String id) {
    this.figures = figures;
    this.id = id;
  }

  public static List<FigureRow> of(CaseFigures figures, String id) {
    GunBarrelRows barrel = new GunBarrelRows(figures, id);
    List<FigureRow> rows = new ArrayList<>(barrel.leg());
    rows.addAll(barrel.fall(Service.WATER_LEG, "Water"));
    rows.addAll(barrel.fall(Service.OIL_LEG, "Oil"));
    rows.addAll(barrel.holds());
    return rows;
  }

  private List<FigureRow> leg() {
    return rows()
        .computed("Surge through the leg", "What it must pass.", GunBarrelResult::surge)
        .computed(
            "Interface at rest",
            "With nothing running, the liquids as warm as the ground.",
            GunBarrelResult::interfaceAtRest)
        .maybeIn(
            Unit.INCH,
            "Lost in the leg",
            "Each inch lifts the interface about five.",
            atSurge(GunBarrelResult.AtSurge::loss))
        .maybe(
            "Interface at the surge",
            "Lifted by the loss, and by what backs up over the weir.",
            atSurge(GunBarrelResult.AtSurge::interfaceHeight))
        .maybe(
            "Leg passes",
            "With more, water stands at the oil outlet and leaves with the oil.",
            atSurge(GunBarrelResult.AtSurge::most))
        .maybe(
            "Downcomer swallows",
            "And still lets air back past it: with more it pulls like a siphon.",
            atSurge(GunBarrelResult.AtSurge::downcomer))
        .rows();
  }

  private static <T> Function<GunBarrelResult, Optional<T>> atSurge(
      Function<GunBarrelResult.AtSurge, T> part) {
    return g -> g.leg().map(part);
  }

  /** The worst where several lines lead on. */
  private List<FigureRow> fall(Service service, String what) {
    return figures
        .<GunBarrelFall>rows(c -> c.gunBarrel(id).flatMap(g -> worst(g, service)))
        .computed(
            what + " backs up to",
            "Above its bottom, to get over what governs with the line loss up to it.",
            GunBarrelFall::stands)
        .computed(
            what + " has to spare",
            "Up to where it starts from; so much higher the tank could stand. Below zero it"
                + " can't run.",
            GunBarrelFall::spare)
        .words(what + " must get over", "What governs.", f -> Optional.of(f.governs()))
        .rows();
  }

  private static Optional<GunBarrelFall> worst(GunBarrelResult barrel, Service service) {
    return barrel.falls().stream()
        .filter(f -> f.service() == service)
        .min(java.util.Comparator.comparingDouble(f -> f.spare().value().metres()));
  }

  private List<FigureRow> holds() {
    return rows()
        .maybeIn(
            Unit.DAY_UNIT,
            "Oil stays",
            "Time for the water to drop out of it.",
            GunBarrelResult::oilStays)
        .maybeIn(
            Unit.HOUR,
            "Water stays",
            "Time for the oil to rise out of it.",
            GunBarrelResult::waterStays)
        .computed(
            "On a well on its ground",
            "Before line loss: a fixed weight that nothing can raise or lower.",
            GunBarrelResult::onWells)
        .computed("At its bottom", "The weight of the liquid inside.", GunBarrelResult::atBottom)
        .rows();
  }

  private FigureRows<GunBarrelResult> rows() {
    return figures.rows(c -> c.gunBarrel(id));
  }
}
