package tankyard.app.working;

import tankyard.app.example.Pictures;

/** Pictures of a working. */
public final class WorkingPictures {
  private WorkingPictures() {}

  public static void take(Pictures pictures, boolean dark) {
    WorkingViewModel model = new WorkingViewModel(text -> {});
    model.open(WorkingViewModelTest.LOSS);
    pictures.take("working", new WorkingView(model), 480, 460, dark);
    model.goInto(WorkingViewModelTest.RATE);
    pictures.take("working-inner", new WorkingView(model), 480, 460, dark);
  }
}
