package tankyard.engine.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Starts the command line from the class path. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    System.setProperty("java.awt.headless", "true"); // pictures are drawn without a screen
    PrintStream out = utf8(FileDescriptor.out);
    PrintStream err = utf8(FileDescriptor.err);
    int code = Cli.run(args, out, err);
    out.flush();
    err.flush();
    System.exit(code);
  }

  private static PrintStream utf8(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }
}
