package tankyard.app.files;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import tankyard.app.memory.Memory;
import tankyard.engine.leasefile.LeaseFiles;

/** Asks with the system's own file window, and starts in the folder used last. */
public final class ChooserPicker implements FilePicker {
  private static final String FOLDER = "files.folder";

  private final Supplier<Window> owner;
  private final Memory memory;

  public ChooserPicker(Supplier<Window> owner, Memory memory) {
    this.owner = owner;
    this.memory = memory;
  }

  @Override
  public Optional<Path> toOpen() {
    FileChooser chooser = chooser("Open a lease");
    chooser
        .getExtensionFilters()
        .addAll(
            new FileChooser.ExtensionFilter("Lease files", "*" + LeaseFiles.EXTENSION),
            new FileChooser.ExtensionFilter("All files", "*"));
    return chosen(chooser.showOpenDialog(owner.get()));
  }

  @Override
  public Optional<Path> toSave(String suggested, String ending, String what) {
    FileChooser chooser = chooser("Save " + what);
    chooser.setInitialFileName(suggested);
    chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(what, "*" + ending));
    return chosen(chooser.showSaveDialog(owner.get())).map(file -> withEnding(file, ending));
  }

  static Path withEnding(Path file, String ending) {
    String name = file.getFileName().toString();
    return name.endsWith(ending) ? file : file.resolveSibling(name + ending);
  }

  private FileChooser chooser(String title) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(title);
    memory
        .get(FOLDER)
        .map(Path::of)
        .filter(Files::isDirectory)
        .ifPresent(folder -> chooser.setInitialDirectory(folder.toFile()));
    return chooser;
  }

  private Optional<Path> chosen(File file) {
    Optional<Path> path = Optional.ofNullable(file).map(File::toPath).map(Path::toAbsolutePath);
    path.map(Path::getParent).ifPresent(folder -> memory.put(FOLDER, folder.toString()));
    return path;
  }
}
