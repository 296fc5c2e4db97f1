package tankyard.engine.leasefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Tank;

class ExampleFilesTest {
  static final Path FOLDER = Path.of("../docs/examples");

  static List<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(f -> f.toString().endsWith(LeaseFiles.EXTENSION)).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void anExampleIsWrittenJustAsItWasRead(Path file) throws Exception {
    assertThat(new String(LeaseFiles.write(LeaseFiles.read(file)), "UTF-8"))
        .isEqualTo(Files.readString(file));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void anExampleSaysThatItIsInvented(Path file) throws Exception {
    Lease lease = LeaseFiles.read(file);

    assertThat(lease.note()).startsWith("An invented lease");
    assertThat(lease.unknowns().fields()).isEmpty();
  }

  @Test
  void osageBendIsDrawnWithOneOilTankAndPricedWithTwo() throws Exception {
    assertThat(oilTanks("p1-osage-bend")).isEqualTo(1);
    assertThat(oilTanks("p1-osage-bend-priced")).isEqualTo(2);
  }

  private static long oilTanks(String name) throws IOException {
    return LeaseFiles.read(FOLDER.resolve(name + LeaseFiles.EXTENSION)).tanks().stream()
        .filter(t -> t.duty() == Tank.Duty.OIL)
        .count();
  }
}
