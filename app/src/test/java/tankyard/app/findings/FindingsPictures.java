package tankyard.app.findings;

import tankyard.app.example.Desk;
import tankyard.app.example.Pictures;

/** Pictures of the findings. */
public final class FindingsPictures {
  private FindingsPictures() {}

  public static void take(Pictures pictures, boolean dark) {
    Desk desk = new Desk();
    FindingsViewModel model = new FindingsViewModel(desk.selection, desk.solve, desk.shown::add);
    model.pickedProperty().set(model.shown().get(1));
    pictures.take("findings", new FindingsView(model), 1240, 300, dark);
  }
}
