package tankyard.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever can't be used is said in one line, with exit code 2 and nothing else printed. */
class UnusableInputTest {
  @TempDir Path folder;

  private static void refused(Typed typed, String... words) {
    assertThat(typed.code()).as(typed.err()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).hasLineCount(1).endsWith("\n").contains("accepted: ");
    assertThat(typed.err()).doesNotContain("Exception", "\tat ", "fault in the program");
    assertThat(typed.err()).contains(words);
  }

  private static String[] words(String command, String file) {
    return (command + "\n" + file).replaceFirst(" ", "\n").split("\n");
  }

  private String file(String text) throws IOException {
    Path file = folder.resolve("bad.lease.json");
    Files.writeString(file, text, StandardCharsets.UTF_8);
    return file.toString();
  }

  @ParameterizedTest
  @CsvSource({"size", "check", "bill", "page settings"})
  void aMissingFile(String command) {
    String none = folder.resolve("none.lease.json").toString();
    refused(Typed.run(words(command, none)), none, "no such file");
  }

  @ParameterizedTest
  @CsvSource({"size", "check", "bill", "page settings"})
  void aFolderInPlaceOfAFile(String command) {
    refused(Typed.run(words(command, folder.toString())), folder.toString(), "a folder");
  }

  @Test
  void aPageThatIsNone() {
    refused(Typed.run("page", "poster", Typed.example("p1-osage-bend")), "poster", "settings");
  }

  @Test
  void aNameLongerThanAnyFilesMayBe() {
    refused(Typed.run("size", "x".repeat(5000)), "does not open");
  }

  @Test
  void anEmptyFile() throws IOException {
    String bad = file("");
    refused(Typed.run("size", bad), bad, "empty");
  }

  @Test
  void brokenJsonWithItsPlace() throws IOException {
    String bad = file("{\n  \"format\": \"tankyard-lease\",\n  \"version\": ,\n}");
    refused(Typed.run("size", bad), bad + ":3:");
  }

  @Test
  void somebodyElsesJson() throws IOException {
    String bad = file("{\"hello\": 1}");
    refused(Typed.run("size", bad), bad, "tankyard-lease");
  }

  @Test
  void aVersionFromTheFuture() throws IOException {
    String bad = file("{\"format\": \"tankyard-lease\", \"version\": 99}");
    refused(Typed.run("size", bad), bad, "99");
  }

  @Test
  void aPictureInPlaceOfALease() throws IOException {
    Path file = folder.resolve("picture.png");
    Files.write(file, new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2, (byte) 0xff});
    refused(Typed.run("size", file.toString()), file.toString());
  }

  private String changed(String from, String to) throws IOException {
    String good = Files.readString(Path.of(Typed.example("p1-osage-bend")));
    assertThat(good).contains(from);
    return file(good.replace(from, to));
  }

  @Test
  void aUnitThatMeasuresSomethingElse() throws IOException {
    String bad =
        changed("{\"value\": 842, \"unit\": \"ft\"}", "{\"value\": 842, \"unit\": \"psi\"}");
    refused(Typed.run("size", bad), bad, "/wells/0/ground", "psi", "ft");
  }

  @Test
  void wordsWhereANumberBelongs() throws IOException {
    String bad = changed("\"value\": 842", "\"value\": \"high\"");
    refused(Typed.run("size", bad), bad, "/wells/0/ground", "high");
  }

  @Test
  void aLineThatEndsAtNothing() throws IOException {
    String bad =
        changed(
            "\"to\": \"WT1\",\n      \"pipe\": \"poly-2\",\n      \"length\"",
            "\"to\": \"WT9\",\n      \"pipe\": \"poly-2\",\n      \"length\"");
    refused(Typed.run("size", bad), bad, "WT9");
  }

  @Test
  void twoThingsWithOneId() throws IOException {
    String bad = changed("\"id\": \"W2\"", "\"id\": \"W1\"");
    refused(Typed.run("size", bad), bad, "W1");
  }

  @Test
  void anAbsurdValue() throws IOException {
    String bad =
        changed("{\"value\": 27, \"unit\": \"bbl/d\"}", "{\"value\": -27, \"unit\": \"bbl/d\"}");
    refused(Typed.run("size", bad), bad, "/wells/0/water", "-27");
  }

  @Test
  void aCutOffFile() throws IOException {
    String good = Files.readString(Path.of(Typed.example("p1-osage-bend")));
    String bad = file(good.substring(0, good.length() / 2));
    refused(Typed.run("check", bad), bad);
  }

  @Test
  void allThatIsWrongIfAskedFor() throws IOException {
    String bad =
        changed("{\"value\": 27, \"unit\": \"bbl/d\"}", "{\"value\": -27, \"unit\": \"bbl/d\"}");
    refused(Typed.run("check", bad), "and 3 more");
    Typed all = Typed.run("check", "--all", bad);
    assertThat(all.code()).isEqualTo(2);
    assertThat(all.err()).hasLineCount(4);
  }

  @Test
  void noCommand() {
    refused(Typed.run(), "no command", "size", "demo");
  }

  @Test
  void anUnknownCommand() {
    refused(Typed.run("solve"), "solve", "size", "demo");
  }

  @Test
  void anUnknownOption() {
    refused(Typed.run("size", Typed.example("p1-osage-bend"), "--pdf"), "--pdf", "--json", "--out");
  }

  @Test
  void noFileNamed() {
    refused(Typed.run("size"), "FILE");
  }

  @Test
  void twoFiles() {
    String p1 = Typed.example("p1-osage-bend");
    refused(Typed.run("size", p1, "other.json"), "other.json");
  }

  @Test
  void anOptionWithoutItsValue() {
    refused(Typed.run("size", Typed.example("p1-osage-bend"), "--map"), "--map");
  }

  @Test
  void aCaseThatIsNotThere() {
    refused(
        Typed.run("size", Typed.example("p1-osage-bend"), "--case", "winter"),
        "winter",
        "today, all-on");
  }

  @Test
  void aDayThatIsNone() {
    refused(
        Typed.run("size", Typed.example("p1-osage-bend"), "--date", "31.12.2026"),
        "--date",
        "31.12.2026",
        "2026-07-01");
  }

  @Test
  void unitsThatAreNone() {
    refused(
        Typed.run("size", Typed.example("p1-osage-bend"), "--units", "stone"),
        "stone",
        "field",
        "metric");
  }

  @Test
  void aMapOfAnotherKind() {
    refused(
        Typed.run("size", Typed.example("p1-osage-bend"), "--map", "map.gif"), "map.gif", ".svg");
  }

  @Test
  void aBillIntoAFolder() {
    refused(
        Typed.run("size", Typed.example("p1-osage-bend"), "--bill", folder.toString()),
        folder.toString(),
        "a folder");
  }

  @Test
  void aBillWhereNoFolderIs() {
    refused(
        Typed.run(
            "size",
            Typed.example("p1-osage-bend"),
            "--bill",
            folder.resolve("none/bill.csv").toString()),
        "no such folder");
  }

  @Test
  void aFolderThatIsAFile() throws IOException {
    String taken = file("taken");
    refused(Typed.run("size", Typed.example("p1-osage-bend"), "--out", taken), taken, "a file");
  }

  @Test
  void aFolderThatCanNotBeMade() throws IOException {
    String below = file("taken") + "/below";
    refused(
        Typed.run("size", Typed.example("p1-osage-bend"), "--out", below), below, "can't be made");
  }

  @Test
  void theDemoWithoutACatalogueBesideIt() {
    refused(Typed.run("demo", "--out", folder.toString()), "demo");
  }
}
