package tankyard.app.shell;

import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.MenuBar;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The window's frame: rack, map over strip, sheet; bars above and below. */
public final class StudioWindow extends BorderPane {
  private static final double SHEET_PX = 340;
  private static final double LEAST_SHEET_PX = 290; // Below it words in fields are cut off.
  private static final double MAP_SHARE = 0.53;

  private final Region rack;
  private final Region map;
  private final Strip strip;
  private final Region sheet;

  public StudioWindow(
      MenuBar menus, HBox top, HBox status, Region rack, Region map, Strip strip, Region sheet) {
    this.rack = rack;
    this.map = map;
    this.strip = strip;
    this.sheet = sheet;
    setId("studio");
    setTop(new VBox(menus, top));
    setBottom(status);
    SplitPane middle = new SplitPane(map, strip);
    middle.setId("split-strip");
    middle.setOrientation(Orientation.VERTICAL);
    middle.setDividerPositions(MAP_SHARE);
    sheet.setMinWidth(LEAST_SHEET_PX);
    sheet.setPrefWidth(SHEET_PX);
    SplitPane across = new SplitPane(middle, sheet);
    across.setId("split-sheet");
    across.setDividerPositions(0.75);
    HBox.setHgrow(across, Priority.ALWAYS);
    setCenter(new HBox(rack, across));
  }

  public Strip strip() {
    return strip;
  }

  /** Moves the keyboard on to the next part of the window: rack, map, sheet, strip. */
  public void nextPart(boolean back) {
    Region[] parts = {rack, map, sheet, strip};
    Node owner = getScene().getFocusOwner();
    int at = back ? 0 : parts.length - 1;
    for (int i = 0; i < parts.length; i++) {
      if (isWithin(owner, parts[i])) {
        at = i;
      }
    }
    for (int step = 1; step <= parts.length; step++) {
      int next = Math.floorMod(at + (back ? -step : step), parts.length);
      if (focusFirst(parts[next])) {
        return;
      }
    }
  }

  private static boolean isWithin(Node node, Node part) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (n == part) {
        return true;
      }
    }
    return false;
  }

  private static boolean focusFirst(Node node) {
    if (node.isFocusTraversable() && node.isVisible() && !node.isDisabled()) {
      node.requestFocus();
      return true;
    }
    if (node instanceof javafx.scene.Parent parent) {
      for (Node child : parent.getChildrenUnmodifiable()) {
        if (focusFirst(child)) {
          return true;
        }
      }
    }
    return false;
  }
}
