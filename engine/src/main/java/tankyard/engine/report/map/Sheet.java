package tankyard.engine.report.map;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.List;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Tee;
import tankyard.engine.lease.Thing;
import tankyard.engine.report.doc.Figure;
import tankyard.engine.report.doc.Results;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.UnitSystem;

/** One framed piece of map: the whole lease, or a crowded corner of it. */
final class Sheet {
  private final Results results;
  private final UnitSystem units;
  private final Palette palette;
  private final Ground ground;
  private final Frame frame;
  private final Labels labels;
  private boolean lengths;

  Sheet(Results results, UnitSystem units, Palette palette, Ground ground, Frame frame) {
    this.results = results;
    this.units = units;
    this.palette = palette;
    this.ground = ground;
    this.frame = frame;
    this.labels = new Labels(frame.page());
  }

  /** The same with the length of each line beside its name. */
  Sheet withLengths() {
    lengths = true;
    return this;
  }

  /** Where its scale bar and the like stand, so that no label comes there. */
  void keepOff(Rectangle2D box) {
    labels.keepOff(box);
  }

  /**
   * Paints it.
   *
   * @param corners crowded corners that are shown enlarged elsewhere; only their outline is named
   */
  void paint(Graphics2D g, List<Corner> corners) {
    g.setColor(palette.map());
    g.fill(frame.page());
    Shape clip = g.getClip();
    g.clip(frame.page());
    ground.paint(g, frame, labels);
    new OutlineLayer(results.lease(), palette).paint(g, frame, labels);
    LineLayer lines = new LineLayer(results.lease(), palette);
    lines.paint(g, frame, labels);
    List<Thing> things = Extent.standing(results.lease());
    new ThingLayer(things, palette).paint(g, frame, labels);
    ground.paintSpots(g, frame);
    corners.forEach(c -> corner(g, c));
    name(g, things, corners);
    name(lines, corners);
    ground.nameSpots(g, frame, labels);
    labels.paint(g, palette);
    g.setClip(clip);
    g.setColor(palette.faint());
    g.setStroke(new BasicStroke(1));
    g.draw(frame.page());
  }

  private void corner(Graphics2D g, Corner corner) {
    Rectangle2D box = corner.on(frame);
    g.setColor(palette.ink());
    g.setStroke(new BasicStroke(1f));
    g.draw(box);
    labels.keepOff(box);
    labels.thing(g, box, corner.title() + ", see right", Type.THING, palette.ink());
  }

  private void name(Graphics2D g, List<Thing> things, List<Corner> corners) {
    for (Thing thing : things) {
      boolean elsewhere = corners.stream().anyMatch(c -> c.holds(thing));
      if (!elsewhere && !(thing instanceof Tee) && frame.shows(frame.at(thing.at()))) {
        Symbol symbol = Symbol.of(thing, frame.at(thing.at()), frame.scale());
        labels.thing(g, symbol.outline().getBounds2D(), thing.name(), Type.THING, palette.ink());
      }
    }
    for (Tee tee : results.lease().tees()) {
      if (corners.stream().noneMatch(c -> c.holds(tee)) && frame.shows(frame.at(tee.at()))) {
        Symbol symbol = Symbol.of(tee, frame.at(tee.at()), frame.scale());
        labels.thing(g, symbol.outline().getBounds2D(), tee.name(), Type.SMALL, palette.faint());
      }
    }
  }

  private void name(LineLayer layer, List<Corner> corners) {
    for (Line line : results.lease().lines()) {
      boolean elsewhere =
          corners.stream().anyMatch(c -> c.holds(line.from()) && c.holds(line.to()));
      if (!elsewhere) {
        labels.along(layer.way(line, frame), words(line), Type.LINE, palette.line(line.service()));
      }
    }
  }

  /** Name and length; a short line has room for its length alone. */
  private List<String> words(Line line) {
    return results.cases().stream()
        .flatMap(c -> c.line(line.id()).stream())
        .findFirst()
        .filter(r -> lengths)
        .map(r -> Figure.DISTANCE.words(r.length(), units, Rounding.NEAREST))
        .map(feet -> List.of(line.name() + ", " + feet, feet))
        .orElse(List.of(line.name()));
  }

  Labels labels() {
    return labels;
  }
}
