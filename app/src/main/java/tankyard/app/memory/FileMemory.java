package tankyard.app.memory;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.Properties;

/**
 * Keeps the choices in a properties file. Losing them is a nuisance and no more, so a file that
 * can't be read or written is logged and otherwise passed over.
 */
public final class FileMemory implements Memory {
  private static final System.Logger LOG = System.getLogger(FileMemory.class.getName());

  private final Path file;
  private final Properties values = new Properties();

  public FileMemory(Path file) {
    this.file = file;
    if (Files.isReadable(file)) {
      try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
        values.load(reader);
      } catch (IOException | IllegalArgumentException e) {
        LOG.log(System.Logger.Level.WARNING, "Choices in " + file + " can't be read", e);
      }
    }
  }

  /** The folder for the program's own files, below the owner's home. */
  public static Path home() {
    return Path.of(System.getProperty("user.home"), ".tankyard");
  }

  @Override
  public Optional<String> get(String key) {
    return Optional.ofNullable(values.getProperty(key));
  }

  @Override
  public void put(String key, String value) {
    if (value.equals(values.setProperty(key, value))) {
      return;
    }
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      Path fresh = file.resolveSibling(file.getFileName() + ".new");
      try (Writer writer = Files.newBufferedWriter(fresh, StandardCharsets.UTF_8)) {
        values.store(writer, "Tankyard: choices of the window");
      }
      Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      LOG.log(System.Logger.Level.WARNING, "Choices can't be written to " + file, e);
    }
  }
}
