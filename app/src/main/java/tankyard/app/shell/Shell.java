package tankyard.app.shell;

import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.Region;
import tankyard.app.edit.LeaseStore;
import tankyard.app.edit.ViewSettings;
import tankyard.app.solve.SolveService;
import tankyard.app.style.Look;

/** Puts the window together from parts that do not know each other. */
public final class Shell {
  private final Actions actions = new Actions();
  private final Menus menus = new Menus(actions);
  private final LeaseStore store;
  private final ViewSettings view;
  private final SolveService solve;
  private final Look look;

  public Shell(LeaseStore store, ViewSettings view, SolveService solve, Look look) {
    this.store = store;
    this.view = view;
    this.solve = solve;
    this.look = look;
  }

  public Actions actions() {
    return actions;
  }

  public Menus menus() {
    return menus;
  }

  /**
   * The window.
   *
   * @param hint what to do next
   * @param cursor where the pointer is
   */
  public StudioWindow window(
      Region rack,
      Region map,
      List<Pane> strip,
      Region sheet,
      ObservableValue<String> hint,
      ObservableValue<String> cursor) {
    return new StudioWindow(
        menus.bar(),
        new TopBar(store, view, look, actions),
        new StatusBar(hint, cursor, store.undoNameProperty(), solve),
        rack,
        map,
        new Strip(strip),
        sheet);
  }
}
