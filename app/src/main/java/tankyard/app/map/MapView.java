package tankyard.app.map;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import tankyard.app.edit.Hand;
import tankyard.app.map.layers.CloseUpLayer;
import tankyard.app.map.layers.GhostLayer;
import tankyard.app.map.layers.GridLayer;
import tankyard.app.map.layers.GroundLayer;
import tankyard.app.map.layers.LabelLayer;
import tankyard.app.map.layers.Layer;
import tankyard.app.map.layers.LineLayer;
import tankyard.app.map.layers.MarginLayer;
import tankyard.app.map.layers.OutlineLayer;
import tankyard.app.map.layers.Painting;
import tankyard.app.map.layers.ThingLayer;
import tankyard.app.map.layers.WireLayer;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.CloseUp;
import tankyard.app.map.tools.MapDesk;
import tankyard.app.solve.Freshness;
import tankyard.app.solve.SolveService;
import tankyard.app.style.Inks;
import tankyard.app.style.Look;

/** The drawing itself: one canvas that takes the keyboard and hands every event on. */
public final class MapView extends Pane {
  private final MapViewModel map;
  private final SolveService solve;
  private final Look look;
  private final Canvas canvas = new Canvas();
  private final Region focusRing = new Region();
  private final InPlace inPlace;
  private final MapMenu menu;
  private boolean spaceHeld;
  private final ObjectProperty<Painting.Shown> shown =
      new SimpleObjectProperty<>(this, "shown", Painting.Shown.all());
  private final List<Layer> layers =
      List.of(
          new GroundLayer(),
          new GridLayer(),
          new OutlineLayer(),
          new LineLayer(),
          new WireLayer(),
          new ThingLayer(),
          new LabelLayer(),
          new CloseUpLayer(),
          new GhostLayer(),
          new MarginLayer());

  public MapView(MapViewModel map, SolveService solve, Look look) {
    this.map = map;
    this.solve = solve;
    this.look = look;
    setId("lease-map");
    getStyleClass().add("ty-map");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.PARENT);
    accessibleTextProperty().bind(map.spokenProperty());
    focusRing.getStyleClass().add("ty-focus-ring");
    focusRing.setMouseTransparent(true);
    focusRing.setManaged(false);
    inPlace = new InPlace(this);
    menu = new MapMenu(this, map, inPlace);
    getChildren().addAll(canvas, focusRing, inPlace.field());
    setMinSize(200, 150);
    repaintWhenAnythingChanges();
    MapDesk desk = map.desk();
    new MapMouse(this, map).listen();
    new MapKeys(this, map, map.actions()).listen();
    desk.hand().inHandProperty().addListener((o, before, now) -> takeKeys(now));
    desk.hand().carryProperty().addListener((o, before, carry) -> carried(carry));
  }

  private void repaintWhenAnythingChanges() {
    MapDesk desk = map.desk();
    List.of(
            desk.cameraProperty(),
            desk.planProperty(),
            desk.ghostProperty(),
            desk.selection().idsProperty(),
            map.reliefProperty(),
            map.hoveredProperty(),
            solve.freshnessProperty(),
            shown,
            look.shadeProperty())
        .forEach(o -> o.addListener((x, before, after) -> setNeedsLayout(true)));
  }

  /** Which sheets are laid on. */
  public ObjectProperty<Painting.Shown> shownProperty() {
    return shown;
  }

  /** What is in hand works on the map, so the keys must come here. */
  private void takeKeys(Hand.InHand now) {
    if (now != Hand.InHand.NOTHING) {
      requestFocus();
    }
  }

  boolean isSpaceHeld() {
    return spaceHeld;
  }

  void setSpaceHeld(boolean held) {
    spaceHeld = held;
  }

  void openMenu(double x, double y, Point2D screen) {
    menu.open(x, y, screen);
  }

  /** Lets the one picked thing or line be renamed where it stands. */
  public void renamePicked() {
    menu.renamePicked();
  }

  private void carried(Hand.Carry carry) {
    if (carry != null) {
      new RackCarry(this, map).to(carry);
    }
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double height = getHeight();
    if (canvas.getWidth() != width || canvas.getHeight() != height) {
      canvas.setWidth(width);
      canvas.setHeight(height);
      map.sight().resized(width, height);
    }
    focusRing.resizeRelocate(0, 0, width, height);
    paint(canvas.getGraphicsContext2D(), map.desk().camera());
    super.layoutChildren();
  }

  /** Paints the whole drawing; for the screen and for a picture. */
  void paint(GraphicsContext g, Camera camera) {
    Inks inks = Inks.of(look.shade());
    g.setFill(inks.paper());
    g.fillRect(0, 0, camera.widthPx(), camera.heightPx());
    Painting painting = painting(g, inks, camera);
    for (Layer layer : layers) {
      g.save();
      layer.paint(painting);
      g.restore();
    }
  }

  private Painting painting(GraphicsContext g, Inks inks, Camera camera) {
    MapDesk desk = map.desk();
    return new Painting(
        g,
        inks,
        camera,
        desk.plan(),
        map.reliefProperty().get(),
        desk.selection().ids(),
        map.hoveredProperty().get(),
        Optional.ofNullable(desk.ghostProperty().get()),
        desk.units(),
        shown.get(),
        solve.freshness() != Freshness.CURRENT,
        CloseUp.of(desk.plan(), camera));
  }
}
