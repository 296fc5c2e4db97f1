package tankyard.app.map.layers;

import java.util.List;
import java.util.Optional;
import tankyard.app.edit.ThingKind;
import tankyard.app.map.plan.CloseUp;
import tankyard.app.map.plan.LabelPlacer;
import tankyard.app.map.plan.MapBox;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.PlanOutline;
import tankyard.app.map.plan.SymbolSize;
import tankyard.engine.lease.Service;

/** The name of a berm or landmark, at one of its corners. */
final class OutlineLabel {
  private OutlineLabel() {}

  /** What lies about within the close-up is named there. */
  private static boolean isInCloseUp(Painting p, PlanOutline outline) {
    MapBox around = MapBox.around(outline.spots()).orElseThrow();
    return p.closeUp()
        .map(CloseUp::box)
        .filter(box -> box.contains(around.centre()) && around.widthM() < 2 * box.widthM())
        .isPresent();
  }

  /** At the first of its corners, from the north, that has room beside it. */
  static void write(Painting p, LabelPlacer placer, PlanOutline outline) {
    boolean lit = p.isLit(outline.id());
    if (isInCloseUp(p, outline) && !lit) {
      return;
    }
    double width = Lettering.width(outline.name(), Lettering.NOTE);
    SymbolSize spot = SymbolSize.of(ThingKind.LANDMARK, 0, 0, p.camera());
    List<MapSpot> seen = outline.fromNorth().stream().filter(p::sees).toList();
    seen.stream()
        .flatMap(at -> beside(p, placer, at, spot, width, false).stream())
        .findFirst()
        .or(
            () ->
                seen.stream()
                    .filter(at -> lit)
                    .findFirst()
                    .flatMap(at -> beside(p, placer, at, spot, width, true)))
        .ifPresent(
            box ->
                Lettering.write(
                    p.g(),
                    outline.name(),
                    Lettering.NOTE,
                    box.x(),
                    box.y(),
                    outline.water() ? p.inks().of(Service.WATER_LEG) : p.inks().quiet(),
                    p.inks().paper()));
  }

  private static Optional<LabelPlacer.Box> beside(
      Painting p, LabelPlacer placer, MapSpot at, SymbolSize spot, double width, boolean must) {
    return placer.beside(p.camera().x(at), p.camera().y(at), spot, width, Lettering.LINE_PX, must);
  }
}
