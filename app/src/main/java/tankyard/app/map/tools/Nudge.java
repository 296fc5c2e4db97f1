package tankyard.app.map.tools;

import java.util.List;
import tankyard.app.edit.Gesture;
import tankyard.app.edit.Move;

/** Moves the picked things by arrow keys; a run of keys is one step to undo. */
public final class Nudge {
  private final MapDesk desk;
  private List<String> ids = List.of();
  private String gesture = "";
  private double eastM;
  private double northM;
  private long revision = -1;

  public Nudge(MapDesk desk) {
    this.desk = desk;
  }

  /** Moves by so many steps; false where nothing is picked. */
  public boolean by(double eastSteps, double northSteps) {
    List<String> picked = desk.selection().ids();
    if (picked.isEmpty()) {
      return false;
    }
    if (!picked.equals(ids) || revision != desk.store().revision()) {
      ids = picked;
      gesture = Gesture.start();
      eastM = 0;
      northM = 0;
    }
    double step = desk.lengthUnit().toSi(1);
    eastM += eastSteps * step;
    northM += northSteps * step;
    desk.edit(Move.of(ids, eastM, northM).in(gesture));
    revision = desk.store().revision();
    return true;
  }
}
