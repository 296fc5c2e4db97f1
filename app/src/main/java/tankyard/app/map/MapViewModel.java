package tankyard.app.map;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import tankyard.app.edit.Hand.InHand;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ViewSettings;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.CloseUp;
import tankyard.app.map.plan.Hit;
import tankyard.app.map.plan.HitTester;
import tankyard.app.map.plan.MapBox;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.PlanMaker;
import tankyard.app.map.plan.Relief;
import tankyard.app.map.plan.ReliefMaker;
import tankyard.app.map.tools.KeyPointer;
import tankyard.app.map.tools.LineTool;
import tankyard.app.map.tools.MapDesk;
import tankyard.app.map.tools.MeasureTool;
import tankyard.app.map.tools.Nudge;
import tankyard.app.map.tools.PanTool;
import tankyard.app.map.tools.PlaceTool;
import tankyard.app.map.tools.SelectTool;
import tankyard.app.map.tools.Tool;
import tankyard.app.solve.SolveService;
import tankyard.app.solve.Solved;
import tankyard.engine.lease.Lease;
import tankyard.engine.study.LeaseGround;
import tankyard.engine.terrain.Ground;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.UnitSystem;

/** What the lease map shows and what is in hand over it; knows nothing of how it is drawn. */
public final class MapViewModel {
  private static final double FIT_MARGIN_PX = 90;

  private final MapDesk desk;
  private final ViewSettings view;
  private final SolveService solve;
  private final Map<InHand, Tool> tools = new EnumMap<>(InHand.class);
  private final PanTool pan;
  private final Nudge nudge;
  private final KeyPointer keyPointer;
  private final MapActions actions;
  private final ObjectProperty<Relief> relief =
      new SimpleObjectProperty<>(this, "relief", Relief.flat());
  private final StringProperty hovered = new SimpleStringProperty(this, "hovered", "");
  private final ReadOnlyStringWrapper hint = new ReadOnlyStringWrapper(this, "hint", "");
  private final ReadOnlyStringWrapper cursor = new ReadOnlyStringWrapper(this, "cursor", "");
  private final ReadOnlyStringWrapper spoken = new ReadOnlyStringWrapper(this, "spoken", "");
  private UnitSystem reliefUnits;
  private Camera lastFit;

  public MapViewModel(MapDesk desk, ViewSettings view, SolveService solve) {
    this.desk = desk;
    this.view = view;
    this.solve = solve;
    pan = new PanTool(desk);
    nudge = new Nudge(desk);
    keyPointer = new KeyPointer(desk);
    actions = new MapActions(this);
    fillTools();
    listen();
    readGround();
    drawPlan();
    sayHint();
  }

  private void fillTools() {
    for (InHand what : InHand.values()) {
      what.thing().ifPresent(kind -> tools.put(what, new PlaceTool(desk, kind)));
    }
    tools.put(InHand.NOTHING, new SelectTool(desk));
    tools.put(InHand.LINE, new LineTool(desk));
    tools.put(InHand.MEASURE, new MeasureTool(desk));
    tools.put(InHand.PAN, pan);
  }

  private void listen() {
    desk.store().leaseProperty().addListener((o, a, b) -> leaseChanged());
    desk.store().documentProperty().addListener((o, a, b) -> fit());
    solve.latestProperty().addListener((o, a, b) -> drawPlan());
    view.unitsProperty().addListener((o, a, b) -> leaseChanged());
    view.caseIdProperty().addListener((o, a, b) -> drawPlan());
    desk.refusalProperty().addListener((o, a, b) -> sayHint());
    hovered.addListener((o, a, b) -> sayHint());
    desk.hand().inHandProperty().addListener((o, before, after) -> handChanged(before));
    desk.selection().idsProperty().addListener((o, a, b) -> saySelection());
    desk.selection().revealProperty().addListener((o, a, b) -> reveal(b));
  }

  private void leaseChanged() {
    readGround();
    drawPlan();
  }

  private void readGround() {
    Ground ground = LeaseGround.of(desk.lease()).surface();
    if (!ground.spots().equals(desk.groundProperty().get().spots())
        || reliefUnits != view.units()) {
      desk.groundProperty().set(ground);
      relief.set(ReliefMaker.of(ground.facets(), view.units().unit(Dimension.ELEVATION)));
      reliefUnits = view.units();
    }
  }

  private void drawPlan() {
    Lease lease = desk.lease();
    desk.planProperty()
        .set(PlanMaker.of(lease, solve.latest().map(Solved::answer), view.caseId(), view.units()));
    saySelection();
  }

  private void handChanged(InHand before) {
    tools.get(before).giveUp();
    desk.ghostProperty().set(null);
    desk.refusalProperty().set("");
    keyPointer.forget();
    sayHint();
  }

  /** What presses on the map go to. */
  public Tool tool() {
    return tools.get(desk.hand().inHand());
  }

  public PanTool pan() {
    return pan;
  }

  public Nudge nudge() {
    return nudge;
  }

  /** What can be done to what is picked. */
  public MapActions actions() {
    return actions;
  }

  public KeyPointer keyPointer() {
    return keyPointer;
  }

  public MapDesk desk() {
    return desk;
  }

  public ObjectProperty<Relief> reliefProperty() {
    return relief;
  }

  /** Id of what the pointer is over; empty for nothing. */
  public StringProperty hoveredProperty() {
    return hovered;
  }

  /** What to do next, or why the last thing could not be done. */
  public ReadOnlyStringProperty hintProperty() {
    return hint.getReadOnlyProperty();
  }

  /** East, north and ground under the pointer. */
  public ReadOnlyStringProperty cursorProperty() {
    return cursor.getReadOnlyProperty();
  }

  /** What is picked, in words for a screen reader. */
  public ReadOnlyStringProperty spokenProperty() {
    return spoken.getReadOnlyProperty();
  }

  /** Says again what to do next: a tool may be in another state. */
  public void sayHint() {
    String refusal = desk.refusalProperty().get();
    String over = desk.plan().spoken(hovered.get());
    hint.set(refusal.isEmpty() ? (over.isEmpty() ? tool().hint() : over) : refusal);
  }

  /** Says something until the hand moves on: that a file was saved. */
  public void say(String words) {
    if (!words.isEmpty()) {
      hint.set(words);
    }
  }

  private void saySelection() {
    List<String> ids = desk.selection().ids();
    spoken.set(
        ids.isEmpty()
            ? "Lease map. Nothing picked. Tab steps through the things"
            : ids.size() == 1 ? desk.plan().spoken(ids.get(0)) : ids.size() + " things picked");
  }

  /** The pointer is over a place of the map. */
  public void pointAt(double x, double y) {
    MapSpot spot = desk.camera().spot(x, y);
    OptionalDouble ground = desk.groundAt(spot);
    String height =
        ground.isEmpty()
            ? "ground not known"
            : "ground " + view.units().print(ground.getAsDouble(), Dimension.ELEVATION, 5);
    cursor.set(
        "E "
            + view.units().print(spot.eastM(), Dimension.LENGTH, 5)
            + "   N "
            + view.units().print(spot.northM(), Dimension.LENGTH, 5)
            + "   "
            + height);
    Hit hit = hitAt(x, y);
    hovered.set(handIsEmpty() && !isOnCloseUp(x, y) ? hit.id() : "");
  }

  public void pointAway() {
    cursor.set("");
    hovered.set("");
  }

  /** Whether a point lies on the close-up in the corner. */
  boolean isOnCloseUp(double x, double y) {
    return handIsEmpty() && closeUp().map(c -> c.frame().contains(x, y)).orElse(false);
  }

  /** Brings what the close-up shows into view at its own scale. */
  void goToCloseUp() {
    closeUp()
        .ifPresent(c -> desk.cameraProperty().set(desk.camera().fitted(c.box(), FIT_MARGIN_PX)));
  }

  private Optional<CloseUp> closeUp() {
    return CloseUp.of(desk.plan(), desk.camera());
  }

  private boolean handIsEmpty() {
    return desk.hand().inHand() == InHand.NOTHING;
  }

  public Hit hitAt(double x, double y) {
    return new HitTester(desk.plan(), desk.camera()).at(x, y, desk.selection().ids());
  }

  public void resized(double width, double height) {
    boolean stillFitted = lastFit == null || desk.camera().equals(lastFit);
    desk.cameraProperty().set(desk.camera().resized(width, height));
    if (stillFitted && width > 0 && height > 0) {
      fit();
    }
  }

  /** Brings the whole lease into view, and keeps it so until somebody moves the map. */
  public void fit() {
    Optional<MapBox> bounds = desk.plan().bounds();
    bounds.ifPresent(b -> desk.cameraProperty().set(fitted(b)));
    lastFit = desk.camera();
  }

  /** Beside the close-up, where there is one and it would be in the way. */
  private Camera fitted(MapBox bounds) {
    Camera camera = desk.camera();
    double margin = Math.min(FIT_MARGIN_PX, Math.min(camera.widthPx(), camera.heightPx()) / 5);
    Camera plain = camera.fitted(bounds, margin);
    Optional<CloseUp> closeUp = CloseUp.of(desk.plan(), plain);
    boolean hides = closeUp.map(c -> c.hides(desk.plan(), plain)).orElse(false);
    return hides ? camera.fitted(bounds, margin, closeUp.get().frame().width() - 40) : plain;
  }

  public void zoom(double factor) {
    Camera camera = desk.camera();
    desk.cameraProperty().set(camera.zoomedAt(camera.widthPx() / 2, camera.heightPx() / 2, factor));
  }

  public void zoomAt(double x, double y, double factor) {
    desk.cameraProperty().set(desk.camera().zoomedAt(x, y, factor));
  }

  private void reveal(Selection.Reveal wanted) {
    desk.plan().bounds(wanted.id()).ifPresent(this::show);
  }

  /** Brings a box into view; leaves the map where it is if it is in view already. */
  void show(MapBox box) {
    Camera camera = desk.camera();
    MapSpot southWest = new MapSpot(box.westM(), box.southM());
    MapSpot northEast = new MapSpot(box.eastM(), box.northM());
    if (!camera.shows(southWest, 40) || !camera.shows(northEast, 40)) {
      Camera fitted = camera.fitted(box, 2 * FIT_MARGIN_PX);
      boolean tooNear = fitted.pxPerM() > camera.pxPerM();
      desk.cameraProperty().set(tooNear ? camera.centredOn(box.centre()) : fitted);
    }
  }
}
