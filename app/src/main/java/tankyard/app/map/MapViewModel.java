package tankyard.app.map;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
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
import tankyard.app.map.plan.Hit;
import tankyard.app.map.plan.HitTester;
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
  private final MapDesk desk;
  private final ViewSettings view;
  private final SolveService solve;
  private final Map<InHand, Tool> tools = new EnumMap<>(InHand.class);
  private final PanTool pan;
  private final Nudge nudge;
  private final KeyPointer keyPointer;
  private final MapActions actions;
  private final Sight sight;
  private final ObjectProperty<Relief> relief =
      new SimpleObjectProperty<>(this, "relief", Relief.flat());
  private final StringProperty hovered = new SimpleStringProperty(this, "hovered", "");
  private final ReadOnlyStringWrapper hint = new ReadOnlyStringWrapper(this, "hint", "");
  private final ReadOnlyStringWrapper cursor = new ReadOnlyStringWrapper(this, "cursor", "");
  private final ReadOnlyStringWrapper spoken = new ReadOnlyStringWrapper(this, "spoken", "");
  private UnitSystem reliefUnits;

  public MapViewModel(MapDesk desk, ViewSettings view, SolveService solve) {
    this.desk = desk;
    this.view = view;
    this.solve = solve;
    pan = new PanTool(desk);
    nudge = new Nudge(desk);
    keyPointer = new KeyPointer(desk);
    sight = new Sight(desk);
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
    desk.store().documentProperty().addListener((o, a, b) -> sight.fit());
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

  /** Which part of the map is in view. */
  public Sight sight() {
    return sight;
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
    hovered.set(handIsEmpty() && !sight.isOnCloseUp(x, y) ? hit.id() : "");
  }

  public void pointAway() {
    cursor.set("");
    hovered.set("");
  }

  private boolean handIsEmpty() {
    return desk.hand().inHand() == InHand.NOTHING;
  }

  public Hit hitAt(double x, double y) {
    return new HitTester(desk.plan(), desk.camera()).at(x, y, desk.selection().ids());
  }

  private void reveal(Selection.Reveal wanted) {
    desk.plan().bounds(wanted.id()).ifPresent(sight::show);
  }
}
