package tankyard.app.shell;

import java.util.List;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.Tooltip;

/** The strip below the map. */
public final class Strip extends TabPane {
  public Strip(List<Pane> panes) {
    setId("strip");
    setTabClosingPolicy(TabClosingPolicy.UNAVAILABLE);
    for (Pane pane : panes) {
      Tab tab = new Tab(pane.title(), pane.content());
      tab.setId("tab-" + pane.id());
      tab.setTooltip(new Tooltip(pane.reason()));
      getTabs().add(tab);
    }
    setMinHeight(90);
  }

  /** Brings a tab to the front. */
  public void show(String id) {
    getTabs().stream()
        .filter(t -> t.getId().equals("tab-" + id))
        .findFirst()
        .ifPresent(getSelectionModel()::select);
  }
}
