package tankyard.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tankyard.engine.lease.Lease;
import tankyard.engine.leasefile.LeaseFiles;

/** Sizing a lease file, from what is typed to what is printed and written. */
class SizeTest {
  private static final String DAY = "2026-07-01";

  @TempDir Path folder;

  @Test
  void theSheetOfTheFirstExampleNamesBothEndsOfTheWindowAndTheSetting() {
    Typed typed = Typed.run("size", Typed.example("p1-osage-bend"), "--date", DAY);

    // By hand: least 7.51 at the tank's inlet, most 27 at the relief valve, set 9.
    assertThat(typed.out())
        .containsPattern(
            "least +7\\.6 +Water tank's inlet +Today +5\\.27 +0\\.0\\d +1\\.17 +1\\.00")
        .containsPattern("set +9\\.0 +recommended")
        .containsPattern("most +27\\.0 +Separator's relief valve");
    assertThat(typed.err()).isEmpty();
  }

  @Test
  void theSheetOfTheFirstExampleHasBoxesTanksAndTheFinding() {
    Typed typed = Typed.run("size", Typed.example("p1-osage-bend"), "--date", DAY);

    // By hand at 9 psi with 2-in lines: 12.1, 10.3, 13.9 and 8.1 psi.
    assertThat(typed.out())
        .containsPattern("Well 1 +3 +27 +40\\.0 +12\\.1 +12\\.1")
        .containsPattern("Well 2 +3 +27 +40\\.0 +10\\.3")
        .containsPattern("Well 3 +3 +27 +40\\.0 +13\\.9")
        .containsPattern("Well 4 +3 +27 +40\\.0 +8\\.1")
        .containsPattern("Today +12 +181\\.9 +\\[\\d+\\] +196\\.0")
        .contains("FIX oil-storage-short", "Way out: Set a second oil tank")
        .contains("Planning aid, not an engineer's design; field-check heights and pressures.")
        .contains(DAY);
  }

  @Test
  void aHillGovernsAndTheTankAloneStandsBesideIt() {
    Typed typed = Typed.run("size", Typed.example("p2-sandstone-knob"));

    assertThat(typed.out())
        .containsPattern("least +14\\.\\d +crest 1,000 ft out on Water leg")
        .containsPattern("Looking at the tank alone .* would say -0\\.\\d psi");
  }

  @Test
  void noLineOfASheetIsWiderThanThePage() throws Exception {
    for (String file : Typed.examples()) {
      assertThat(Typed.run("size", file).out().lines())
          .as(file)
          .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }
  }

  @Test
  void metricUnitsShowTheSameWindow() {
    Typed typed = Typed.run("size", Typed.example("p1-osage-bend"), "--units", "metric");

    // 7.52 psi is 51.8 kPa, up to the next whole one; 27 psi is 186.2 kPa, down to it.
    assertThat(typed.out())
        .containsPattern("gauge,.*\\n.*kPa")
        .containsPattern("least +52 ")
        .containsPattern("most +186 ");
  }

  @Test
  void aFixEndsWithOneAndNothingWorseThanALookWithNought() throws Exception {
    Path blank = folder.resolve("blank.lease.json");
    Files.write(blank, LeaseFiles.write(blankLease()));

    assertThat(Typed.run("size", Typed.example("p1-osage-bend")).code()).isEqualTo(1);
    assertThat(Typed.run("size", blank.toString()).code()).isEqualTo(0);
  }

  private static Lease blankLease() throws Exception {
    String text =
        """
        {"format": "tankyard-lease", "version": 2, "name": "Blank", "note": "", "site": {},
         "fluids": {"oil": {"value": 36, "unit": "°API"}, "brine": {"value": 1.06, "unit": "SG"}}}
        """;
    return LeaseFiles.read(
        "blank", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void oneCaseCanBeWorkedOutByItself() {
    Typed typed = Typed.run("size", Typed.example("p1-osage-bend"), "--case", "all-on", "--json");

    assertThat(typed.out()).contains("\"id\": \"all-on\"").doesNotContain("\"id\": \"today\"");
  }

  @Test
  void theSameLeaseOnTheSameDayGivesTheSameJson() {
    String[] line = {"size", "--json", Typed.example("p3-coyote-creek"), "--date", DAY};

    assertThat(Typed.run(line).out()).isEqualTo(Typed.run(line).out());
  }

  @Test
  void everythingIsWrittenIntoAFolderThatIsMade() {
    Path out = folder.resolve("new/folder");
    Typed typed = Typed.run("size", Typed.example("p1-osage-bend"), "--out", out.toString());

    assertThat(typed.code()).isEqualTo(1);
    for (String name :
        new String[] {"sheet.txt", "map.svg", "map.png", "bill.csv", "result.json"}) {
      assertThat(out.resolve(name)).isNotEmptyFile();
      assertThat(typed.out()).contains("Wrote " + out.resolve(name));
    }
    assertThat(out.resolve("result.json"))
        .content()
        .isEqualTo(Typed.run("size", "--json", Typed.example("p1-osage-bend")).out());
  }

  @Test
  void billAndMapGoWhereTheyAreSent() {
    Path bill = folder.resolve("b.csv");
    Path map = folder.resolve("m.SVG");
    Typed.run(
        "size",
        Typed.example("p1-osage-bend"),
        "--bill",
        bill.toString(),
        "--map",
        map.toString(),
        "--dark");

    assertThat(bill).content().startsWith("text,kind,item").contains("2-in poly SDR 11");
    assertThat(map).content().contains("<svg");
  }

  @Test
  void theBillIsPrintedWithWhatCausedEachLine() {
    Typed typed = Typed.run("bill", Typed.example("p1-osage-bend"));

    assertThat(typed.code()).isEqualTo(0);
    // 1,768 ft and 5 % waste at 1.15: 2,135 by hand.
    assertThat(typed.out())
        .containsPattern("2-in poly SDR 11 +1856\\.90 +per ft +1\\.15 +2,135\\.44");
    assertThat(Typed.run("bill", "--csv", Typed.example("p1-osage-bend")).out())
        .startsWith("text,kind,item");
  }

  @Test
  void aGoodFileIsCheckedInOneLine() {
    Typed typed = Typed.run("check", Typed.example("p1-osage-bend"));

    assertThat(typed.code()).isEqualTo(0);
    assertThat(typed.out()).contains("can be used").hasLineCount(1);
  }

  @Test
  void helpAndVersionArePrinted() {
    assertThat(Typed.run("--version").out()).matches("Tankyard \\d+\\.\\d+.*\\n");
    for (String command : new String[] {"size", "check", "bill", "demo", "sum"}) {
      Typed help = Typed.run(command, "--help");
      assertThat(help.code()).as(command).isEqualTo(0);
      assertThat(help.out()).as(command).contains("Usage: tankyard " + command);
    }
    assertThat(Typed.run("--help").out()).contains("size", "check", "bill", "demo", "sum");
  }

  @Test
  void aQuickSumNeedsNoLease() {
    Typed typed = Typed.run("sum", "barrels-per-foot", "--diameter", "12 ft");

    // 0.13989 D^2: 20.14 by the hand rule.
    assertThat(typed.code()).isEqualTo(0);
    assertThat(typed.out()).contains("20.14").endsWith("heights and pressures.\n");
    assertThat(Typed.run("sum").out()).contains("pipe-loss", "gun-barrel");
  }

  @Test
  void aQuickSumThatCanNotBeDoneIsOneLineToo() {
    Typed typed = Typed.run("sum", "barrels-per-foot", "--diameter", "12 psi");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).hasLineCount(1).contains("12 psi");
  }
}
