package tankyard.app.shell;

import java.util.List;
import javafx.collections.ObservableList;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;

/** The menu bar, made of actions. */
public final class Menus {
  /** Stands for a rule between two groups. */
  public static final String RULE = "-";

  private final Actions actions;
  private final MenuBar bar = new MenuBar();

  public Menus(Actions actions) {
    this.actions = actions;
    bar.setId("menu-bar");
  }

  public MenuBar bar() {
    return bar;
  }

  /** Adds a menu of actions by id. */
  public Menu add(String id, String words, List<String> ids) {
    Menu menu = new Menu(words);
    menu.setId(id);
    ids.forEach(
        each -> menu.getItems().add(each.equals(RULE) ? new SeparatorMenuItem() : item(each)));
    bar.getMenus().add(menu);
    return menu;
  }

  private MenuItem item(String actionId) {
    Action action = actions.get(actionId);
    MenuItem item = new MenuItem();
    item.setId("menu-" + action.id());
    item.setMnemonicParsing(false);
    item.textProperty().bind(action.words());
    item.disableProperty().bind(action.enabled().map(can -> !can));
    action.key().ifPresent(item::setAccelerator);
    item.setOnAction(e -> action.run().run());
    return item;
  }

  /** A menu inside a menu whose items come and go: files opened last. */
  public static Menu changing(String id, String words, ObservableList<MenuItem> items) {
    Menu menu = new Menu(words);
    menu.setId(id);
    javafx.beans.binding.Bindings.bindContent(menu.getItems(), items);
    return menu;
  }
}
