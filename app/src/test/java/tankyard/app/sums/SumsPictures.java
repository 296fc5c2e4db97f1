package tankyard.app.sums;

import tankyard.app.example.Pictures;
import tankyard.engine.quick.sums.AllSums;

/** Pictures of the quick sums. */
public final class SumsPictures {
  private SumsPictures() {}

  public static void take(Pictures pictures, boolean dark) {
    SumsViewModel model = new SumsViewModel(AllSums.list(), working -> {});
    model.fillExample();
    pictures.take("sums", new SumsView(model), 980, 620, dark);
    model.pickedProperty().set(AllSums.find("retention").orElseThrow());
    pictures.take("sums-missing", new SumsView(model), 980, 620, dark);
  }
}
