package tankyard.engine.leasefile;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What a save did.
 *
 * @param file written
 * @param keptAside where the file that stood there before went, if it could not be read as a lease
 */
public record SavedFile(Path file, Optional<Path> keptAside) {}
