package tankyard.app.takeoff;

import tankyard.app.example.Desk;
import tankyard.app.example.Pictures;

/** Pictures of the bill. */
public final class TakeoffPictures {
  private TakeoffPictures() {}

  public static void take(Pictures pictures, boolean dark) {
    Desk desk = new Desk();
    TakeoffViewModel model =
        new TakeoffViewModel(
            desk.selection, desk.solve, desk.shown::add, text -> {}, (name, text) -> {});
    pictures.take("takeoff", new TakeoffView(model), 1240, 300, dark);
  }
}
