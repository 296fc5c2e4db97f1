package tankyard.app;

import java.nio.file.Files;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.Region;
import tankyard.app.ahead.AheadPanel;
import tankyard.app.edit.LeaseStore;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ViewSettings;
import tankyard.app.files.LeaseDesk;
import tankyard.app.findings.FindingsView;
import tankyard.app.findings.FindingsViewModel;
import tankyard.app.pressure.CuresViewModel;
import tankyard.app.pressure.PressureView;
import tankyard.app.pressure.PressureViewModel;
import tankyard.app.profile.ProfileView;
import tankyard.app.profile.ProfileViewModel;
import tankyard.app.pumps.PumpsPanel;
import tankyard.app.sheet.SheetView;
import tankyard.app.sheet.SheetViewModel;
import tankyard.app.shell.Pane;
import tankyard.app.solve.CureService;
import tankyard.app.solve.SolveService;
import tankyard.app.takeoff.TakeoffView;
import tankyard.app.takeoff.TakeoffViewModel;
import tankyard.app.tanks.TanksPanel;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.working.Working;

/** Makes the sheet and the panes of the strip. */
final class Panels {
  private final LeaseStore store;
  private final Selection selection;
  private final ViewSettings view;
  private final SolveService solve;
  private final CureService cures;
  private final LeaseDesk desk;
  private final Catalog catalog;
  private final Consumer<Working> showWorking;

  Panels(
      LeaseStore store,
      Selection selection,
      ViewSettings view,
      SolveService solve,
      CureService cures,
      LeaseDesk desk,
      Catalog catalog,
      Consumer<Working> showWorking) {
    this.store = store;
    this.selection = selection;
    this.view = view;
    this.solve = solve;
    this.cures = cures;
    this.desk = desk;
    this.catalog = catalog;
    this.showWorking = showWorking;
  }

  List<Pane> strip() {
    return List.of(
        new Pane("findings", "Findings", "What needs fixing, worst first", findings()),
        new Pane(
            "window",
            "Back-pressure window",
            "Between which gauge readings the separator works, and what sets either end",
            new PressureView(
                new PressureViewModel(selection, view, solve, showWorking),
                new CuresViewModel(selection, view, cures))),
        new Pane(
            "profile",
            "Profile",
            "Ground, pipe and pressure along a line, or from a well to the separator",
            new ProfileView(new ProfileViewModel(selection, view, solve))),
        new Pane(
            "tanks",
            "Vessels and tanks",
            "Minutes in the separator, days to a load, hours to spilling",
            TanksPanel.make(selection, view, solve, showWorking)),
        new Pane(
            "injection",
            "Injection",
            "Pump power, hours a day and how near the permit is",
            PumpsPanel.make(selection, view, solve, showWorking)),
        new Pane(
            "ahead",
            "Runs out next",
            "In which month pumps, wells, tanks and the window run out as the water grows",
            AheadPanel.make(selection, view, solve, showWorking)),
        new Pane("bill", "Bill", "What to buy, what it costs and which thing caused it", bill()));
  }

  private Region bill() {
    return new TakeoffView(
        new TakeoffViewModel(selection, solve, showWorking, Panels::toClipboard, this::saveText));
  }

  private void saveText(String suggestedName, String text) {
    desk.export(suggestedName, ".csv", "CSV tables", file -> Files.writeString(file, text));
  }

  private static void toClipboard(String text) {
    ClipboardContent content = new ClipboardContent();
    content.putString(text);
    Clipboard.getSystemClipboard().setContent(content);
  }

  private Region findings() {
    return new FindingsView(new FindingsViewModel(selection, solve, showWorking));
  }

  Region sheet() {
    return new SheetView(new SheetViewModel(store, selection, view, solve, catalog, showWorking));
  }
}
