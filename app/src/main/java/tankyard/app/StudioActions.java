package tankyard.app;

import java.nio.file.Path;
import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import tankyard.app.edit.Align;
import tankyard.app.edit.Hand.InHand;
import tankyard.app.edit.LeaseStore;
import tankyard.app.map.MapActions;
import tankyard.app.shell.Action;
import tankyard.app.shell.Actions;
import tankyard.app.shell.Menus;
import tankyard.app.shell.StudioWindow;
import tankyard.app.style.Shade;
import tankyard.engine.lease.Status;
import tankyard.engine.report.doc.Page;
import tankyard.engine.units.UnitSystem;

/** Every action of the window and the menus they stand in. */
final class StudioActions {
  private final Actions actions;
  private final Studio studio;
  private StudioWindow window;

  StudioActions(Actions actions, Studio studio) {
    this.actions = actions;
    this.studio = studio;
  }

  void setWindow(StudioWindow made) {
    window = made;
  }

  void fill() {
    files();
    edits();
    views();
    hands();
    add("sums", "Quick sums\u2026", "Shortcut+K", studio::openSums);
    add("start-page", "Start page", "", studio::openStartPage);
    add("next-part", "Next part of the window", "F6", () -> window.nextPart(false));
    add("part-before", "Part before", "Shift+F6", () -> window.nextPart(true));
  }

  private Action add(String id, String words, String key, Runnable run) {
    return actions.add(Action.of(id, words, key, run));
  }

  private void files() {
    add("new", "New lease", "Shortcut+N", studio::openEmpty);
    add("demo", "Open the demo lease", "", studio::openDemo);
    add("open", "Open\u2026", "Shortcut+O", studio.desk()::open);
    add("save", "Save", "Shortcut+S", studio.desk()::save);
    add("save-as", "Save as\u2026", "Shortcut+Shift+S", studio.desk()::saveAs);
    add("picture", "Export the map as a picture\u2026", "", studio::exportPicture);
    page("sheet", "Print the whole sheet to a file\u2026", Page.SHEET);
    page("settings-page", "Print the settings page to a file\u2026", Page.SETTINGS);
    page("gauge-tables", "Print the gauge tables to a file\u2026", Page.GAUGE);
    add("quit", "Quit", "Shortcut+Q", this::quit);
  }

  /** There is something to print once the lease has been worked out. */
  private void page(String id, String words, Page page) {
    actions.add(
        Action.of(id, words, "", () -> studio.exportPage(page))
            .when(studio.solve().latestProperty().map(solved -> true).orElse(false)));
  }

  /** As if the window's own close button were pressed, so that unsaved changes are asked about. */
  private void quit() {
    var stage = window.getScene().getWindow();
    stage.fireEvent(
        new javafx.stage.WindowEvent(stage, javafx.stage.WindowEvent.WINDOW_CLOSE_REQUEST));
  }

  private void edits() {
    LeaseStore store = studio.store();
    MapActions map = studio.map().actions();
    ObservableValue<Boolean> picked =
        studio.map().desk().selection().idsProperty().map(ids -> !ids.isEmpty());
    undo("undo", "Undo", "Shortcut+Z", store.undoNameProperty(), store::undo);
    undo("redo", "Redo", "Shortcut+Y", store.redoNameProperty(), store::redo);
    actions.add(Action.of("copy", "Copy", "Shortcut+C", map::copy).when(picked));
    actions.add(
        Action.of("paste", "Paste", "Shortcut+V", map::paste)
            .when(map.copiedProperty().map(c -> true).orElse(false)));
    actions.add(Action.of("duplicate", "Duplicate", "Shortcut+D", map::duplicate).when(picked));
    add("select-all", "Pick everything", "Shortcut+A", map::selectAll);
    actions.add(
        Action.of("rename", "Rename", "", studio.mapPane().view()::renamePicked).when(picked));
    actions.add(Action.of("delete", "Delete", "", map::delete).when(picked));
    for (Status status : Status.values()) {
      String id = "mark-" + status.name().toLowerCase(java.util.Locale.ROOT);
      String words = "Mark \"" + status.words() + "\"";
      actions.add(Action.of(id, words, "", () -> map.mark(status)).when(picked));
    }
    actions.add(
        Action.of("row", "Line up west to east", "", () -> map.align(Align.Along.ROW))
            .when(picked));
    actions.add(
        Action.of("column", "Line up south to north", "", () -> map.align(Align.Along.COLUMN))
            .when(picked));
  }

  private void undo(
      String id, String word, String key, ObservableValue<String> step, Runnable run) {
    actions.add(
        Action.of(id, word, key, run)
            .named(step.map(s -> s.isEmpty() ? word : word + ": " + s))
            .when(step.map(s -> !s.isEmpty())));
  }

  private void views() {
    MapActions map = studio.map().actions();
    add("fit", "Show the whole lease", "Shortcut+0", map::fit);
    add("zoom-picked", "Zoom to what is picked", "Shortcut+E", map::zoomToPicked);
    add("zoom-in", "Zoom in", "Shortcut+PLUS", map::zoomIn);
    add("zoom-out", "Zoom out", "Shortcut+MINUS", map::zoomOut);
    add(
        "field-units",
        "Field units",
        "",
        () -> studio.view().unitsProperty().set(UnitSystem.FIELD));
    add(
        "metric-units",
        "Metric units",
        "",
        () -> studio.view().unitsProperty().set(UnitSystem.METRIC));
    add("light", "Light", "", () -> studio.look().shadeProperty().set(Shade.LIGHT));
    add("dark", "Dark", "", () -> studio.look().shadeProperty().set(Shade.DARK));
    add("solve", "Work it out now", "F5", studio.solve()::solve);
    actions.add(
        Action.of("live", "Working out: live", "", this::flipLive)
            .named(
                studio
                    .solve()
                    .liveProperty()
                    .map(on -> on ? "Stop working out every edit" : "Work out every edit")));
  }

  private void flipLive() {
    studio.solve().liveProperty().set(!studio.solve().liveProperty().get());
  }

  private void hands() {
    int number = 1;
    for (InHand what : InHand.values()) {
      if (what.thing().isPresent()) {
        String words = what.thing().get().words();
        add("set-down-" + words.replace(' ', '-'), words, "Alt+" + number++, () -> take(what));
      }
    }
    add("connect", "Connect", "Shortcut+L", studio.map().actions()::connect);
    add("tape", "Tape", "Shortcut+M", () -> take(InHand.MEASURE));
    add("pan", "Drag the map", "", () -> take(InHand.PAN));
  }

  private void take(InHand what) {
    studio.hand().take(what);
    studio.mapPane().view().requestFocus();
  }

  void lay(Menus menus) {
    Menu file =
        menus.add(
            "menu-file",
            "File",
            List.of(
                "new",
                "demo",
                "open",
                Menus.RULE,
                "save",
                "save-as",
                Menus.RULE,
                "picture",
                "sheet",
                "settings-page",
                "gauge-tables",
                Menus.RULE,
                "quit"));
    file.getItems().add(3, Menus.changing("menu-recent", "Open a recent file", recent()));
    menus.add(
        "menu-edit",
        "Edit",
        List.of(
            "undo",
            "redo",
            Menus.RULE,
            "copy",
            "paste",
            "duplicate",
            "delete",
            Menus.RULE,
            "select-all",
            "rename",
            Menus.RULE,
            "mark-new",
            "mark-have",
            "mark-remove",
            Menus.RULE,
            "row",
            "column"));
    menus.add(
        "menu-set-down",
        "Set down",
        List.of(
            "set-down-well",
            "set-down-tee",
            "set-down-separator",
            "set-down-gun-barrel",
            "set-down-oil-tank",
            "set-down-water-tank",
            "set-down-injection-pump",
            "set-down-injection-well",
            Menus.RULE,
            "connect",
            "tape"));
    menus.add(
        "menu-view",
        "View",
        List.of(
            "fit",
            "zoom-picked",
            "zoom-in",
            "zoom-out",
            "pan",
            Menus.RULE,
            "field-units",
            "metric-units",
            Menus.RULE,
            "light",
            "dark",
            Menus.RULE,
            "solve",
            "live",
            Menus.RULE,
            "next-part",
            "part-before"));
    menus.add("menu-tools", "Tools", List.of("sums"));
    menus.add("menu-help", "Help", List.of("start-page"));
  }

  private ObservableList<MenuItem> recent() {
    ObservableList<Path> files = studio.desk().recent().files();
    ObservableList<MenuItem> items = FXCollections.observableArrayList();
    Runnable fill =
        () -> {
          items.clear();
          for (Path path : files) {
            MenuItem item = new MenuItem(path.getFileName().toString());
            item.setMnemonicParsing(false);
            item.setOnAction(e -> studio.desk().open(path));
            items.add(item);
          }
        };
    files.addListener((ListChangeListener<Path>) c -> fill.run());
    fill.run();
    return items;
  }
}
