package tankyard.catalogdemo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * From the printed inputs the printed formula gives the printed digits: every working of every
 * example lease and of the demo, as it stands in the JSON and as it stands on the sheet.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PrintedWorkingsTest {
  private static final String DAY = "2026-07-01";
  private static final Pattern HEAD = Pattern.compile("\\[(\\d+)] +(\\S.*)");
  private static final Pattern INPUT = Pattern.compile(" {8}(\\w+) += (\\S+)(.*)");

  /** JSON and sheet of each lease by its name. */
  private final Map<String, JsonNode> results = new LinkedHashMap<>();

  private final Map<String, String> sheets = new LinkedHashMap<>();

  @BeforeAll
  void workThemOut(@TempDir Path folder) throws IOException {
    ObjectMapper mapper = new ObjectMapper();
    for (String file : Typed.examples()) {
      results.put(file, mapper.readTree(Typed.run("size", "--json", file, "--date", DAY).out()));
      sheets.put(file, Typed.run("size", file, "--date", DAY).out());
    }
    assertThat(Typed.run("demo", "--out", folder.toString(), "--date", DAY).code()).isEqualTo(0);
    results.put("demo", mapper.readTree(folder.resolve("result.json").toFile()));
    sheets.put("demo", Files.readString(folder.resolve("sheet.txt")));
  }

  @Test
  void everyWorkingInTheJsonGivesItsDigitsAgain() {
    List<String> wrong = new ArrayList<>();
    results.forEach(
        (lease, json) -> {
          assertThat(json.get("workings")).as(lease).hasSizeGreaterThan(20);
          for (JsonNode working : json.get("workings")) {
            Map<String, Double> inputs = new HashMap<>();
            for (JsonNode input : working.get("inputs")) {
              inputs.put(input.get("symbol").asText(), input.get("value").asDouble());
            }
            String printed = working.get("result").get("value").decimalValue().toPlainString();
            check(lease, working.get("formula").asText(), inputs, printed, wrong);
          }
        });
    assertThat(wrong).isEmpty();
  }

  @Test
  void everyWorkingOnTheSheetGivesItsDigitsAgain() {
    List<String> wrong = new ArrayList<>();
    sheets.forEach(
        (lease, sheet) -> {
          List<List<String>> blocks = blocks(sheet);
          assertThat(blocks).as(lease).hasSizeGreaterThan(20);
          blocks.forEach(block -> check(lease, block, wrong));
        });
    assertThat(wrong).isEmpty();
  }

  /** The lines of each working: title, formula over one line or more, inputs, source. */
  private static List<List<String>> blocks(String sheet) {
    String appendix = sheet.substring(sheet.indexOf("\nWORKINGS\n"));
    List<List<String>> blocks = new ArrayList<>();
    for (String block : appendix.split("\n\n")) {
      if (HEAD.matcher(block.lines().findFirst().orElse("")).matches()) {
        blocks.add(block.lines().toList());
      }
    }
    return blocks;
  }

  private static void check(String lease, List<String> block, List<String> wrong) {
    Map<String, Double> inputs = new HashMap<>();
    StringBuilder formula = new StringBuilder();
    boolean formulaIsOver = false;
    for (String line : block.subList(1, block.size())) {
      Matcher input = INPUT.matcher(line);
      if (input.matches()) {
        inputs.put(input.group(1), Double.valueOf(input.group(2)));
      }
      formulaIsOver |= input.matches() || line.strip().startsWith("Source:");
      if (!formulaIsOver && (formula.length() > 0 || line.contains(" ="))) {
        formula.append(line.strip()).append(' ');
      }
    }
    // "dp = SG*(Q/Cv)^2 = 1.169 psi", broken at blanks or in the middle of a long formula
    String whole = formula.toString();
    int first = whole.indexOf('=');
    int last = whole.lastIndexOf('=');
    assertThat(last).as(lease + " " + block).isGreaterThan(first);
    String printed = whole.substring(last + 1).strip().split(" ")[0];
    check(lease, whole.substring(first + 1, last).replace(" ", ""), inputs, printed, wrong);
  }

  private static void check(
      String lease,
      String formula,
      Map<String, Double> inputs,
      String printed,
      List<String> wrong) {
    double again = OtherCalculator.value(formula, inputs);
    if (!OtherCalculator.prints(again, printed)) {
      wrong.add(
          lease + ": " + formula + " with " + inputs + " is " + again + ", printed " + printed);
    }
  }

  @Test
  void everyMarkOnASheetHasItsWorking() {
    sheets.forEach(
        (lease, sheet) -> {
          int appendix = sheet.indexOf("\nWORKINGS\n");
          Set<String> marks = new HashSet<>();
          Matcher mark = Pattern.compile("\\[(\\d+)]").matcher(sheet.substring(0, appendix));
          while (mark.find()) {
            marks.add(mark.group(1));
          }
          Set<String> there = new HashSet<>();
          for (List<String> block : blocks(sheet)) {
            Matcher head = HEAD.matcher(block.get(0));
            assertThat(head.matches()).isTrue();
            there.add(head.group(1));
          }
          assertThat(marks).as(lease).hasSizeGreaterThan(10);
          assertThat(there).as(lease).containsAll(marks);
        });
  }

  @Test
  void everyWorkedOutValueOfTheJsonAgreesWithItsWorking() {
    List<String> wrong = new ArrayList<>();
    results.forEach((lease, json) -> agree(lease, json, json.get("workings"), wrong));
    assertThat(wrong).isEmpty();
  }

  /** A value beside a working's number is that working's result, to four figures. */
  private static void agree(String place, JsonNode node, JsonNode workings, List<String> wrong) {
    if (node.has("value") && node.has("working")) {
      JsonNode result = workings.get(node.get("working").asInt() - 1).get("result");
      double value = node.get("value").asDouble();
      double printed = result.get("value").asDouble();
      boolean sameUnit = result.get("unit").asText().equals(node.get("unit").asText());
      if (!sameUnit || Math.abs(value - printed) > 6e-4 * Math.abs(printed) + 1e-9) {
        wrong.add(place + ": " + node + " but worked out " + result);
      }
    }
    node.fieldNames().forEachRemaining(f -> agree(place + "/" + f, node.get(f), workings, wrong));
    if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        agree(place + "/" + i, node.get(i), workings, wrong);
      }
    }
  }
}
