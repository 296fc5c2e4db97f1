package tankyard.app.map.layers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import tankyard.app.map.plan.Badge;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.CloseUp;
import tankyard.app.map.plan.Cornered;
import tankyard.app.map.plan.LabelPlacer;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.PlanLine;
import tankyard.app.map.plan.PlanMark;
import tankyard.app.map.plan.PlanThing;
import tankyard.app.map.plan.SymbolSize;
import tankyard.engine.lease.Status;

/**
 * Names, a few results, and plates on what sets the window. The important first; what finds no room
 * is left out until the map is zoomed in.
 */
public final class LabelLayer implements Layer {
  private static final double ARROW_PX = 16;
  private static final double SPARE_LEG_PX = 60;

  @Override
  public void paint(Painting p) {
    LabelPlacer placer = new LabelPlacer(p.width(), p.height());
    List<PlanThing> seen = p.plan().things().stream().filter(t -> p.sees(t.at())).toList();
    for (PlanThing thing : seen) {
      SymbolSize size = SymbolSize.of(thing, p.camera());
      placer.keepFree(
          p.camera().x(thing.at()), p.camera().y(thing.at()), size.widthPx(), size.heightPx());
    }
    p.closeUp()
        .map(CloseUp::frame)
        .ifPresent(
            f ->
                placer.keepFree(
                    f.x() + f.width() / 2, f.y() + f.height() / 2, f.width(), f.height()));
    p.closeUp()
        .map(c -> CloseUpLayer.leader(p, c))
        .ifPresent(l -> placer.preferOff(l[0], l[1], l[2], l[3]));
    p.plan().lines().forEach(line -> keepOff(p, placer, line));
    p.plan().outlines().forEach(outline -> keepOffLegs(p, placer, outline));
    if (p.shown().results()) {
      p.plan().marks().forEach(mark -> mark(p, placer, mark));
    }
    if (p.shown().names()) {
      seen.stream()
          .filter(
              thing -> !p.closeUp().map(c -> c.holds(thing)).orElse(false) || p.isLit(thing.id()))
          .sorted(Comparator.comparingInt((PlanThing t) -> rank(p, t)))
          .forEach(thing -> thing(p, placer, thing));
      p.plan().outlines().forEach(outline -> OutlineLabel.write(p, placer, outline));
      p.plan().lines().stream()
          .sorted(Comparator.comparing((PlanLine l) -> !p.isLit(l.id())))
          .forEach(line -> line(p, placer, line));
    }
  }

  private static void keepOffLegs(Painting p, LabelPlacer placer, Cornered way) {
    Camera camera = p.camera();
    for (int i = 0; i < way.legs(); i++) {
      MapSpot a = way.legStart(i);
      MapSpot b = way.legEnd(i);
      placer.preferOff(camera.x(a), camera.y(a), camera.x(b), camera.y(b));
    }
  }

  private static void keepOff(Painting p, LabelPlacer placer, PlanLine line) {
    Camera camera = p.camera();
    keepOffLegs(p, placer, line);
    MapSpot arrow =
        line.spots().get(line.longestLeg()).towards(line.spots().get(line.longestLeg() + 1), 0.5);
    placer.keepFree(camera.x(arrow), camera.y(arrow), ARROW_PX, ARROW_PX);
  }

  private static int rank(Painting p, PlanThing thing) {
    if (p.isLit(thing.id())) {
      return 0;
    }
    if (thing.status() == Status.REMOVE) {
      return 6;
    }
    if (!thing.badges().isEmpty()) {
      return 1;
    }
    return switch (thing.kind()) {
      case SEPARATOR, GUN_BARREL -> 2;
      case OIL_TANK, WATER_TANK, INJECTION_PUMP, INJECTION_WELL -> 3;
      case WELL -> 4;
      case TEE, POWER_POLE, BERM, LANDMARK -> 5;
    };
  }

  private static void thing(Painting p, LabelPlacer placer, PlanThing thing) {
    List<String> rows = new ArrayList<>(List.of(thing.name()));
    List<Badge> badges = p.shown().results() ? thing.badges() : List.of();
    if (p.shown().results()) {
      rows.addAll(thing.notes());
    }
    double width = Lettering.width(thing.name(), Lettering.NAME);
    for (int i = 1; i < rows.size(); i++) {
      width = Math.max(width, Lettering.width(rows.get(i), Lettering.NOTE));
    }
    for (Badge badge : badges) {
      width = Math.max(width, Lettering.plateWidth(badge.words()));
    }
    double height = rows.size() * Lettering.LINE_PX + badges.size() * (Lettering.PLATE_PX + 2);
    boolean must = p.isLit(thing.id()) || !badges.isEmpty();
    SymbolSize size = SymbolSize.of(thing, p.camera());
    double x = p.camera().x(thing.at());
    double y = p.camera().y(thing.at());
    SymbolSize haloed = p.isLit(thing.id()) ? size.wider(2 * ThingLayer.HALO_PX) : size;
    Optional<LabelPlacer.Box> box = placer.beside(x, y, haloed, width, height, must);
    if (box.isPresent() || rows.size() == 1) {
      box.ifPresent(b -> write(p, rows, badges, b));
    } else {
      nameAlone(p, placer, thing, haloed);
    }
  }

  /** Where its results find no room, a thing had better keep its name than be nameless. */
  private static void nameAlone(
      Painting p, LabelPlacer placer, PlanThing thing, SymbolSize symbol) {
    double width = Lettering.width(thing.name(), Lettering.NAME);
    double x = p.camera().x(thing.at());
    double y = p.camera().y(thing.at());
    placer
        .beside(x, y, symbol, width, Lettering.LINE_PX, false)
        .ifPresent(box -> write(p, List.of(thing.name()), List.of(), box));
  }

  private static void write(
      Painting p, List<String> rows, List<Badge> badges, LabelPlacer.Box box) {
    GraphicsContext g = p.g();
    double y = box.y();
    for (int i = 0; i < rows.size(); i++) {
      boolean isName = i == 0;
      Lettering.write(
          g,
          rows.get(i),
          isName ? Lettering.NAME : Lettering.NOTE,
          box.x(),
          y,
          isName ? p.inks().ink() : resultInk(p),
          p.inks().paper());
      y += Lettering.LINE_PX;
    }
    for (Badge badge : badges) {
      plate(p, badge, box.x(), y + 1);
      y += Lettering.PLATE_PX + 2;
    }
  }

  /** Results of an earlier lease are pale until the new ones are there. */
  private static Color resultInk(Painting p) {
    return p.stale() ? p.inks().quiet().deriveColor(0, 1, 1, 0.6) : p.inks().quiet();
  }

  private static void plate(Painting p, Badge badge, double x, double y) {
    Color plate = badge.end() == Badge.End.LEAST ? p.inks().least() : p.inks().most();
    Lettering.plate(
        p.g(), badge.words(), x, y, p.stale() ? p.inks().quiet() : plate, p.inks().paper());
  }

  private static void mark(Painting p, LabelPlacer placer, PlanMark mark) {
    double x = p.camera().x(mark.at());
    double y = p.camera().y(mark.at());
    GraphicsContext g = p.g();
    boolean least = mark.badge().end() == Badge.End.LEAST;
    double up = least ? 1 : -1; // The least pushes up from below, the most holds down from above.
    g.setFill(least ? p.inks().least() : p.inks().most());
    double[] xs = {x - 6, x + 6, x};
    double[] ys = {y + 5 * up, y + 5 * up, y - 6 * up};
    g.fillPolygon(xs, ys, 3);
    double width = Lettering.plateWidth(mark.badge().words());
    Optional<LabelPlacer.Box> box =
        placer.beside(x, y, new SymbolSize(12, 12, false), width, Lettering.PLATE_PX, true);
    box.ifPresent(b -> plate(p, mark.badge(), b.x(), b.y()));
    placer.keepFree(x, y, 12, 12);
  }

  private static void line(Painting p, LabelPlacer placer, PlanLine line) {
    int leg = line.longestLeg();
    MapSpot a = line.spots().get(leg);
    MapSpot b = line.spots().get(leg + 1);
    if (!p.sees(a.towards(b, 0.3))) {
      return;
    }
    boolean lit = p.isLit(line.id());
    String note = p.shown().results() && !line.note().isEmpty() ? "  " + line.note() : "";
    String words = line.name() + note;
    MapSpot at = a.towards(b, 0.3);
    double width = Lettering.width(words, Lettering.NOTE);
    if (!lit && p.camera().px(a.metresTo(b)) < width + SPARE_LEG_PX) {
      return;
    }
    placer
        .along(p.camera().x(at), p.camera().y(at), width, Lettering.LINE_PX, lit)
        .ifPresent(
            box ->
                Lettering.write(
                    p.g(),
                    words,
                    Lettering.NOTE,
                    box.x(),
                    box.y(),
                    p.inks().of(line.service()),
                    p.inks().paper()));
  }
}
