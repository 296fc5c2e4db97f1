package tankyard.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringExpression;
import javafx.scene.layout.StackPane;
import javafx.stage.Window;
import tankyard.app.edit.Blanks;
import tankyard.app.edit.Hand;
import tankyard.app.edit.LeaseStore;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ViewSettings;
import tankyard.app.files.Dialogs;
import tankyard.app.files.FilePicker;
import tankyard.app.files.LeaseDesk;
import tankyard.app.map.MapPane;
import tankyard.app.map.MapPicture;
import tankyard.app.map.MapViewModel;
import tankyard.app.map.tools.MapDesk;
import tankyard.app.memory.Memory;
import tankyard.app.rack.RackView;
import tankyard.app.shell.Shell;
import tankyard.app.shell.StudioWindow;
import tankyard.app.solve.CureService;
import tankyard.app.solve.SolveService;
import tankyard.app.style.Look;
import tankyard.app.sums.SumsWindow;
import tankyard.app.welcome.StartPage;
import tankyard.app.working.WorkingWindow;
import tankyard.engine.api.Tankyard;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.CatalogSource;
import tankyard.engine.catalog.Pipe;
import tankyard.engine.lease.Lease;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.report.doc.Page;
import tankyard.engine.report.doc.Results;
import tankyard.engine.report.sheet.PlainSheet;

/**
 * The studio put together. The only place that knows every part; what it needs of the world outside
 * comes in as {@link Outside}, so that a test can hand in its own.
 */
public final class Studio {
  private final Outside outside;
  private final LeaseStore store;
  private final Selection selection;
  private final ViewSettings view;
  private final Hand hand = new Hand();
  private final SolveService solve;
  private final CureService cures;
  private final LeaseDesk desk;
  private final MapViewModel map;
  private final MapPane mapPane;
  private final StartPage startPage;
  private final StudioWindow window;
  private final SumsWindow sums;
  private final StackPane root;

  /**
   * The world outside.
   *
   * @param today the day prices are asked for
   * @param background runs jobs later, off the window's thread
   * @param onWindow runs jobs on the window's thread
   */
  public record Outside(
      CatalogSource catalog,
      LocalDate today,
      Memory memory,
      Look look,
      Dialogs dialogs,
      FilePicker picker,
      Executor background,
      Executor onWindow) {}

  /**
   * A studio.
   *
   * @param first the lease it opens on
   */
  public Studio(Outside outside, Lease first) {
    this.outside = outside;
    store = new LeaseStore(first, Studio::objection);
    selection = new Selection(store);
    view = new ViewSettings(store);
    Catalog catalog = outside.catalog().catalog();
    Tankyard engine = new Tankyard(catalog, outside.catalog().prices(), outside.today());
    solve = new SolveService(store, engine::answer, outside.background(), outside.onWindow());
    cures = new CureService(store, engine::cures, outside.background(), outside.onWindow());
    desk = new LeaseDesk(store, outside.dialogs(), outside.picker(), outside.memory());
    MapDesk mapDesk = new MapDesk(store, selection, view, hand, new Blanks(usualPipe(catalog)));
    map = new MapViewModel(mapDesk, view, solve);
    desk.noticeProperty().addListener((o, before, words) -> map.say(words));
    mapPane = new MapPane(map, solve, outside.look());
    startPage =
        new StartPage(
            new StartPage.Ways(this::openDemo, this::openEmpty, desk::open, desk::open),
            desk.recent().files());
    Shell shell = new Shell(store, view, solve, outside.look());
    StudioActions actions = new StudioActions(shell.actions(), this);
    actions.fill();
    actions.lay(shell.menus());
    WorkingWindow workings = new WorkingWindow(this::stage);
    sums = new SumsWindow(this::stage, workings::show);
    Panels panels = new Panels(store, selection, view, solve, cures, desk, catalog, workings::show);
    window =
        shell.window(
            new RackView(hand, outside.look()),
            new StackPane(mapPane, startPage),
            panels.strip(),
            panels.sheet(),
            map.hintProperty(),
            map.cursorProperty());
    actions.setWindow(window);
    root = new StackPane(window);
  }

  /** What no lease file could hold is refused when it is typed, not when it is saved. */
  private static Optional<String> objection(Lease lease) {
    return LeaseFiles.problems("this lease", lease).stream()
        .findFirst()
        .map(p -> "Not taken: " + p.found() + ". Accepted: " + p.accepted() + ".");
  }

  private static String usualPipe(Catalog catalog) {
    return catalog.list(Pipe.class).stream().findFirst().map(Pipe::id).orElse("");
  }

  public LeaseStore store() {
    return store;
  }

  public LeaseDesk desk() {
    return desk;
  }

  public SolveService solve() {
    return solve;
  }

  public MapViewModel map() {
    return map;
  }

  public StudioWindow frame() {
    return window;
  }

  public MapPane mapPane() {
    return mapPane;
  }

  Hand hand() {
    return hand;
  }

  ViewSettings view() {
    return view;
  }

  Look look() {
    return outside.look();
  }

  public StackPane window() {
    return root;
  }

  private Window stage() {
    return root.getScene().getWindow();
  }

  /** The window's title: the lease, its file, and whether it is saved. */
  public StringExpression titleProperty() {
    return Bindings.createStringBinding(
            () -> {
              String file =
                  desk.fileProperty().get() == null
                      ? "no file yet"
                      : desk.fileProperty().get().getFileName().toString();
              return (store.isDirty() ? "\u2022 " : "")
                  + store.lease().name()
                  + " \u2013 "
                  + file
                  + " \u2013 Tankyard";
            },
            store.leaseProperty(),
            store.dirtyProperty(),
            desk.fileProperty())
        .concat("");
  }

  /**
   * Opens the files asked for; the start page where there is neither a file nor a thing to show.
   */
  void startWith(List<String> files) {
    mapPane.view().requestFocus();
    boolean opened = !files.isEmpty() && desk.open(Path.of(files.get(0)).toAbsolutePath());
    if (!opened && store.lease().things().findAny().isEmpty()) {
      startPage.open();
    }
  }

  void openSums() {
    sums.show();
  }

  void openStartPage() {
    startPage.open();
  }

  void openDemo() {
    desk.take(() -> firstLease(outside.catalog()));
  }

  /** Takes up an empty lease, once the one before may go. */
  public void openEmpty() {
    desk.take(EmptyLease::lease);
  }

  /** The demo lease of the catalogue, or an empty one where it has none. */
  public static Lease firstLease(CatalogSource catalog) {
    Optional<InputStream> found = catalog.demoLease();
    if (found.isEmpty()) {
      return EmptyLease.lease();
    }
    try (InputStream in = found.get()) {
      return LeaseFiles.read("demo.lease.json", in);
    } catch (IOException e) {
      throw new UncheckedIOException("The demo lease of the catalogue can't be read", e);
    }
  }

  /** Of the latest answer, which is there before this can be asked for. */
  void exportPage(Page page) {
    Results results =
        Results.of(
                solve.latest().orElseThrow().answer(), outside.catalog().catalog(), outside.today())
            .withCures(cures.booksProperty().get());
    String text = PlainSheet.print(page.of(results, view.units()));
    desk.export(page.word() + ".txt", ".txt", "Text", file -> Files.writeString(file, text));
  }

  void exportPicture() {
    MapPicture picture = new MapPicture(mapPane.view(), map);
    desk.export("map.png", ".png", "PNG pictures", picture::write);
  }
}
