package tankyard.app.map.tools;

/** Drags the map itself. */
public final class PanTool implements Tool {
  private final MapDesk desk;
  private Pointer last;

  public PanTool(MapDesk desk) {
    this.desk = desk;
  }

  @Override
  public String hint() {
    return "Drag the map. The wheel zooms at the pointer";
  }

  @Override
  public void press(Pointer pointer) {
    last = pointer;
  }

  @Override
  public void drag(Pointer pointer) {
    if (last != null) {
      double dx = pointer.x() - last.x();
      double dy = pointer.y() - last.y();
      desk.cameraProperty().set(desk.camera().panned(dx, dy));
      last = pointer;
    }
  }

  @Override
  public void release(Pointer pointer) {
    last = null;
  }
}
