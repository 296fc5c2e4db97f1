package tankyard.catalogdemo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo from the command line: what it says, what it writes, how it ends. */
class DemoCommandTest {
  @TempDir Path folder;

  @Test
  void theDemoSaysWhereItWritesPrintsItsSheetAndEndsWithNought() throws Exception {
    Path out = folder.resolve("demo");
    Typed typed = Typed.run("demo", "--out", out.toString(), "--date", "2026-07-01");

    assertThat(typed.code()).isEqualTo(0);
    assertThat(typed.err()).isEmpty();
    assertThat(typed.out())
        .contains("in the folder " + out.toAbsolutePath())
        .contains("BACK-PRESSURE WINDOW", "WELLS", "TANKS", "FINDINGS", "BILL IN SHORT");
    for (String name :
        new String[] {"sheet.txt", "map.svg", "map.png", "bill.csv", "result.json"}) {
      assertThat(out.resolve(name)).isNotEmptyFile();
    }
    assertThat(Files.readString(out.resolve("sheet.txt"))).contains("WORKINGS");
  }

  @Test
  void theDemoTwiceOnOneDayWritesTheSameBytes() throws Exception {
    Path first = folder.resolve("first");
    Path second = folder.resolve("second");
    Typed.run("demo", "--out", first.toString(), "--date", "2026-07-01");
    Typed.run("demo", "--out", second.toString(), "--date", "2026-07-01");

    for (String name :
        new String[] {"sheet.txt", "map.svg", "map.png", "bill.csv", "result.json"}) {
      assertThat(second.resolve(name)).hasSameBinaryContentAs(first.resolve(name));
    }
  }

  @Test
  void theCrestOfTheDemosWaterLegGoverns() {
    Typed typed = Typed.run("demo", "--out", folder.toString());

    assertThat(typed.out()).containsPattern("least +\\d+\\.\\d +crest 1,");
    assertThat(typed.out()).contains("Looking at the tank alone");
  }
}
