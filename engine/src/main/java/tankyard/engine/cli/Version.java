package tankyard.engine.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** Reads the version that the build wrote down. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"Tankyard " + number()};
  }

  static String number() {
    Properties written = new Properties();
    try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
      if (in != null) {
        written.load(in);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("The version beside this class can't be read", e);
    }
    return written.getProperty("version", "unknown");
  }
}
