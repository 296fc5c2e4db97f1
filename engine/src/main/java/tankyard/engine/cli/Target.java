package tankyard.engine.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** A place to write to, as typed after an option. */
final class Target {
  private final String option;
  private final String typed;
  private final Path path;

  Target(String option, String typed) {
    this.option = option;
    this.typed = typed;
    try {
      this.path = Path.of(typed);
    } catch (InvalidPathException e) {
      throw UnusableException.because(
          option + " " + typed, "what is no file name here", "the name of a file or folder", e);
    }
  }

  /** The same place, made a folder if it is not there. */
  Target folder() {
    if (Files.exists(path) && !Files.isDirectory(path)) {
      throw complaint("a file", "a folder, or a name that is free", null);
    }
    try {
      Files.createDirectories(path);
    } catch (IOException e) {
      throw complaint(
          "a folder that can't be made (" + reason(e) + ")", "a folder to write into", e);
    }
    return this;
  }

  Target in(String name) {
    return new Target(option, path.resolve(name).toString());
  }

  void write(String text) {
    write(text.getBytes(StandardCharsets.UTF_8));
  }

  void write(byte[] bytes) {
    if (Files.isDirectory(path)) {
      throw complaint("a folder", "the name of a file to write", null);
    }
    Path parent = path.toAbsolutePath().getParent();
    if (parent == null || !Files.isDirectory(parent)) {
      throw complaint("no such folder as " + parent, "a file in a folder that is there", null);
    }
    try {
      Files.write(path, bytes);
    } catch (IOException e) {
      throw complaint(
          "a place that can't be written (" + reason(e) + ")",
          "a file or folder that can be written",
          e);
    }
  }

  @Override
  public String toString() {
    return path.toString();
  }

  /** What the machine says, without the name of the file or of a class. */
  private static String reason(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "not allowed";
    }
    boolean told = e instanceof FileSystemException;
    String reason = told ? ((FileSystemException) e).getReason() : e.getMessage();
    return reason == null ? "no reason given" : reason;
  }

  private UnusableException complaint(String found, String accepted, Throwable cause) {
    return UnusableException.because(option + " " + typed, found, accepted, cause);
  }
}
