package tankyard.app.map.tools;

import java.util.List;
import java.util.OptionalDouble;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import tankyard.app.edit.Blanks;
import tankyard.app.edit.Edit;
import tankyard.app.edit.EditRefusedException;
import tankyard.app.edit.Hand;
import tankyard.app.edit.LeaseStore;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ViewSettings;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.Ghost;
import tankyard.app.map.plan.HitTester;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.Plan;
import tankyard.app.map.plan.Snapper;
import tankyard.engine.lease.Lease;
import tankyard.engine.terrain.Ground;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;

/** What the tools work on: the lease, what is picked, the view of the map and the ghost on it. */
public final class MapDesk {
  private final LeaseStore store;
  private final Selection selection;
  private final ViewSettings view;
  private final Hand hand;
  private final Blanks blanks;
  private final ObjectProperty<Camera> camera =
      new SimpleObjectProperty<>(this, "camera", Camera.start());
  private final ObjectProperty<Plan> plan = new SimpleObjectProperty<>(this, "plan", Plan.empty());
  private final ObjectProperty<Ground> ground =
      new SimpleObjectProperty<>(this, "ground", Ground.of(List.of()));
  private final ObjectProperty<Ghost> ghost = new SimpleObjectProperty<>(this, "ghost");
  private final StringProperty refusal = new SimpleStringProperty(this, "refusal", "");

  public MapDesk(
      LeaseStore store, Selection selection, ViewSettings view, Hand hand, Blanks blanks) {
    this.store = store;
    this.selection = selection;
    this.view = view;
    this.hand = hand;
    this.blanks = blanks;
  }

  public Lease lease() {
    return store.lease();
  }

  public LeaseStore store() {
    return store;
  }

  public Selection selection() {
    return selection;
  }

  public Hand hand() {
    return hand;
  }

  public Blanks blanks() {
    return blanks;
  }

  public UnitSystem units() {
    return view.units();
  }

  public Unit lengthUnit() {
    return units().unit(Dimension.LENGTH);
  }

  public Camera camera() {
    return camera.get();
  }

  public ObjectProperty<Camera> cameraProperty() {
    return camera;
  }

  public Plan plan() {
    return plan.get();
  }

  public ObjectProperty<Plan> planProperty() {
    return plan;
  }

  public ObjectProperty<Ground> groundProperty() {
    return ground;
  }

  public OptionalDouble groundAt(MapSpot spot) {
    return ground.get().heightAt(spot.eastM(), spot.northM());
  }

  /** What the tool shows before it is real; null for nothing. */
  public ObjectProperty<Ghost> ghostProperty() {
    return ghost;
  }

  void show(Ghost next) {
    ghost.set(next);
  }

  void clearGhost() {
    ghost.set(null);
  }

  /** Why the last edit could not be done; empty where it could. */
  public StringProperty refusalProperty() {
    return refusal;
  }

  void refuse(String words) {
    refusal.set("");
    refusal.set(words);
  }

  HitTester hits() {
    return new HitTester(plan(), camera());
  }

  public Snapper snapper() {
    return new Snapper(plan(), camera(), lengthUnit());
  }

  /** Does an edit; false and a reason for the status bar where it is refused. */
  public boolean edit(Edit edit) {
    try {
      store.edit(edit);
      refusal.set("");
      return true;
    } catch (EditRefusedException e) {
      refuse(e.getMessage());
      return false;
    }
  }
}
