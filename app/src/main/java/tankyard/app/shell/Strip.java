package tankyard.app.shell;

import java.util.List;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.Tooltip;

/**
 * The strip below the map. Only the pane in front hangs in the window: a table that nobody sees
 * would otherwise be styled anew after every edit, which costs more than working the lease out.
 */
public final class Strip extends TabPane {
  public Strip(List<Pane> panes) {
    setId("strip");
    setTabClosingPolicy(TabClosingPolicy.UNAVAILABLE);
    for (Pane pane : panes) {
      Tab tab = new Tab(pane.title());
      tab.selectedProperty()
          .addListener((o, was, is) -> tab.setContent(is ? pane.content() : null));
      tab.setId("tab-" + pane.id());
      tab.setTooltip(new Tooltip(pane.reason()));
      getTabs().add(tab);
    }
    getSelectionModel().selectFirst();
    getTabs().get(0).setContent(panes.get(0).content());
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
