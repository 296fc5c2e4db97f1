package tankyard.app.sheet;

import java.util.List;
import tankyard.app.example.Desk;
import tankyard.app.example.Pictures;
import tankyard.engine.catalog.Catalogs;

/** Pictures of the sheets. */
public final class SheetPictures {
  private SheetPictures() {}

  public static void take(Pictures pictures, boolean dark) {
    one(pictures, "sheet-well", List.of("W1"), dark);
    one(pictures, "sheet-separator", List.of("S1"), dark);
    one(pictures, "sheet-tank", List.of("OT1"), dark);
    one(pictures, "sheet-line", List.of("L6"), dark);
    one(pictures, "sheet-lease", List.of(), dark);
    one(pictures, "sheet-pump", List.of("P1"), dark);
    one(pictures, "sheet-several", List.of("W1", "W2", "L6"), dark);
  }

  private static void one(Pictures pictures, String name, List<String> ids, boolean dark) {
    Desk desk = new Desk();
    desk.selection.select(ids);
    pictures.take(name, new SheetView(model(desk)), 360, 1000, dark);
  }

  static SheetViewModel model(Desk desk) {
    return new SheetViewModel(
        desk.store,
        desk.selection,
        desk.view,
        desk.solve,
        Catalogs.find().catalog(),
        desk.shown::add);
  }
}
