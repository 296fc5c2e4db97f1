package tankyard.app.edit;

import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;

/**
 * What the person has in hand for the map: nothing (then a press picks and drags), a thing to set
 * down, a line to draw, a tape. The rack, the menus and the map's own buttons all set it, and the
 * map follows.
 */
public final class Hand {
  private final ObjectProperty<InHand> inHand =
      new SimpleObjectProperty<>(this, "inHand", InHand.NOTHING);
  private final ReadOnlyObjectWrapper<Carry> carry = new ReadOnlyObjectWrapper<>(this, "carry");

  /** What it can be. */
  public enum InHand {
    NOTHING(null),
    WELL(ThingKind.WELL),
    TEE(ThingKind.TEE),
    SEPARATOR(ThingKind.SEPARATOR),
    GUN_BARREL(ThingKind.GUN_BARREL),
    OIL_TANK(ThingKind.OIL_TANK),
    WATER_TANK(ThingKind.WATER_TANK),
    INJECTION_PUMP(ThingKind.INJECTION_PUMP),
    INJECTION_WELL(ThingKind.INJECTION_WELL),
    POWER_POLE(ThingKind.POWER_POLE),
    BERM(ThingKind.BERM),
    LANDMARK(ThingKind.LANDMARK),
    LINE(null),
    MEASURE(null),
    PAN(null);

    private final ThingKind thing;

    InHand(ThingKind thing) {
      this.thing = thing;
    }

    /** The kind of thing to set down, if that is what is in hand. */
    public Optional<ThingKind> thing() {
      return Optional.ofNullable(thing);
    }
  }

  /**
   * Where a thing dragged off the rack is, in the window's coordinates.
   *
   * @param stage under way, let go, or given up
   */
  public record Carry(double windowX, double windowY, Stage stage) {
    /** How far the drag is. */
    public enum Stage {
      MOVING,
      DROPPED,
      GIVEN_UP
    }
  }

  public InHand inHand() {
    return inHand.get();
  }

  public ObjectProperty<InHand> inHandProperty() {
    return inHand;
  }

  public void take(InHand what) {
    inHand.set(what);
  }

  public void take(ThingKind kind) {
    for (InHand what : InHand.values()) {
      if (what.thing().filter(kind::equals).isPresent()) {
        inHand.set(what);
      }
    }
  }

  public void putAway() {
    inHand.set(InHand.NOTHING);
  }

  /** A drag off the rack; null when there has been none. */
  public ReadOnlyObjectProperty<Carry> carryProperty() {
    return carry.getReadOnlyProperty();
  }

  public void carryTo(double windowX, double windowY) {
    carry.set(new Carry(windowX, windowY, Carry.Stage.MOVING));
  }

  public void drop(double windowX, double windowY) {
    carry.set(new Carry(windowX, windowY, Carry.Stage.DROPPED));
    carry.set(null);
  }

  public void giveUp() {
    carry.set(new Carry(0, 0, Carry.Stage.GIVEN_UP));
    carry.set(null);
    putAway();
  }
}
