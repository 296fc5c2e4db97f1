package tankyard.app.map.layers;

/** One sheet of the drawing: it paints one sort of thing and nothing else. */
@FunctionalInterface
public interface Layer {
  void paint(Painting painting);
}
