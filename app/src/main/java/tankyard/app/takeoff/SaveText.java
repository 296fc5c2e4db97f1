package tankyard.app.takeoff;

/** Lets a person choose a file and writes text into it. */
@FunctionalInterface
public interface SaveText {
  void save(String suggestedName, String text);
}
