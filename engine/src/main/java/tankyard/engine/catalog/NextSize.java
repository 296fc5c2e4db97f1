package tankyard.engine.catalog;

import java.util.Comparator;
import java.util.Optional;

/** The next size up of the same material, in the class closest to the pipe's own. */
public final class NextSize {
  private NextSize() {}

  public static Optional<Pipe> after(Pipe pipe, Catalog catalog) {
    return catalog.list(Pipe.class).stream()
        .filter(p -> p.material() == pipe.material())
        .filter(p -> p.nominal().compareTo(pipe.nominal()) > 0)
        .filter(p -> p.bore().metres() > pipe.bore().metres())
        .min(
            Comparator.comparing(Pipe::nominal)
                .thenComparingDouble(p -> Math.abs(thickness(p) - thickness(pipe))));
  }

  private static double thickness(Pipe pipe) {
    return pipe.outside().metres() / pipe.bore().metres();
  }
}
