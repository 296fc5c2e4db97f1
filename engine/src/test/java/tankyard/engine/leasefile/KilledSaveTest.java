package tankyard.engine.leasefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Kills a program that does nothing but save, again and again, and looks at what it left. */
class KilledSaveTest {
  private static final long SEED = 7;

  @TempDir Path folder;

  private final Path file = Path.of("killed" + LeaseFiles.EXTENSION);

  @Test
  void aKilledSaveLeavesAWholeLease() throws Exception {
    int midway = killAgainAndAgain(10, List.of(), v -> LeaseFiles.write(SaveLoop.small(v)));

    assertThat(midway).as("kills in the middle of a save").isPositive();
  }

  /** Most of a large save is writing, so this is where a kill finds a file half written. */
  @Test
  void aSaveKilledWhileWritingLeavesTheLeaseBefore(@TempDir Path other) throws Exception {
    Path first = Files.write(other.resolve("first"), SaveLoop.large(1));

    killAgainAndAgain(24, List.of(first.toString()), SaveLoop::large);

    assertThat(halfWritten()).as("files left half written").isPositive();
  }

  /** How many kills came between the start and the end of a save. */
  private int killAgainAndAgain(int kills, List<String> arguments, IntFunction<byte[]> versions)
      throws Exception {
    Random random = new Random(SEED);
    int midway = 0;
    for (int kill = 0; kill < kills; kill++) {
      Saves saves = killWhileSaving(arguments, random.nextInt(150));
      Path left = folder.resolve(file);
      String name = LeaseFiles.read(left).name();
      int version = Integer.parseInt(name.substring("version ".length()));
      assertThat(version).as("kill %d", kill).isBetween(saves.ended(), saves.begun());
      assertThat(left).hasBinaryContent(versions.apply(version));
      midway += saves.begun() > saves.ended() ? 1 : 0;
    }
    System.out.printf(
        "%d kills, %d midway in a save, %d files left half written%n",
        kills, midway, halfWritten());
    return midway;
  }

  /**
   * How far the program came.
   *
   * @param begun the last save it began
   * @param ended the last save it ended
   */
  private record Saves(int begun, int ended) {
    static Saves from(List<String> lines) {
      return new Saves(last(lines, "saving "), last(lines, "saved "));
    }

    private static int last(List<String> lines, String word) {
      return lines.stream()
          .filter(l -> l.startsWith(word))
          .mapToInt(l -> Integer.parseInt(l.substring(word.length())))
          .max()
          .orElse(0);
    }
  }

  private Saves killWhileSaving(List<String> arguments, int milliseconds) throws Exception {
    Process process = start(arguments);
    try (BufferedReader out = process.inputReader()) {
      List<String> lines = new ArrayList<>();
      lines.add(out.readLine());
      lines.add(out.readLine()); // Not before the first save is through: there must be a file.
      Thread.sleep(milliseconds);
      // Through its handle: Process.destroyForcibly() would close what is still to be read here.
      process.toHandle().destroyForcibly();
      out.lines().forEach(lines::add);
      assertThat(process.waitFor(10, TimeUnit.SECONDS)).isTrue();
      return Saves.from(lines);
    } finally {
      process.destroyForcibly();
    }
  }

  private Process start(List<String> arguments) throws IOException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                SaveLoop.class.getName(),
                folder.resolve(file).toString()));
    command.addAll(arguments);
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }

  private long halfWritten() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".saving")).count();
    }
  }
}
