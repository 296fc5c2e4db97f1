package tankyard.engine.report.doc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tankyard.engine.report.Examples;
import tankyard.engine.units.FeetInches;
import tankyard.engine.units.Length;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.window.Window;

/** The pages for the people at the battery. */
class PageTest {
  private static List<String> row(Report report, String section, String first) {
    return report.sections().stream()
        .filter(s -> s.title().equals(section))
        .flatMap(s -> s.blocks().stream())
        .filter(Block.Table.class::isInstance)
        .flatMap(b -> ((Block.Table) b).rows().stream())
        .filter(r -> r.get(0).equals(first))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void settingsAreThoseOfTheWindow() throws Exception {
    Report page = Page.SETTINGS.of(Examples.of("p1-osage-bend"), UnitSystem.FIELD);

    // By hand: least 7.51, most 27 at the relief valve, set 9.
    assertThat(row(page, "Set to", "Separator, regulator").get(1)).isEqualTo("9.0 psi");
    assertThat(row(page, "Set to", "Separator, gauge never below"))
        .contains("7.6 psi", "Water tank's inlet: below it water stops going");
    assertThat(row(page, "Set to", "Separator, gauge never above"))
        .contains("27.0 psi", "Separator's relief valve");
    assertThat(row(page, "Set to", "Oil tank 1, high switch").get(1)).isEqualTo("14 ft 0 in");
  }

  private static Block.Table table(Report report, String title) {
    return report.sections().stream()
        .flatMap(s -> s.blocks().stream())
        .filter(Block.Table.class::isInstance)
        .map(Block.Table.class::cast)
        .filter(t -> t.title().equals(title))
        .findFirst()
        .orElseThrow();
  }

  /** Summer's average beside winter's, strokes that meet beside strokes that meet. */
  @Test
  void summerAndWinterAreOfTheSameRates() throws Exception {
    Report page = Page.SHEET.of(Examples.of("p6-black-wax"), UnitSystem.FIELD);
    List<String> average = trunk(table(page, "Lines: \"July\" beside \"January\""));
    List<String> pulse =
        trunk(table(page, "Lines: \"July, strokes met\" beside \"January, strokes met\""));

    // By hand 23 and 117 psi (the ground's cold all along), three times that with strokes met.
    assertThat(average.get(1)).startsWith("23.");
    assertThat(average.get(2)).startsWith("108.");
    assertThat(Double.parseDouble(pulse.get(1))).isCloseTo(3 * 23.05, within(0.1));
    assertThat(page.toString()).contains("differ by the season alone");
  }

  private static List<String> trunk(Block.Table table) {
    return table.rows().stream().filter(r -> r.get(0).equals("Trunk")).findFirst().orElseThrow();
  }

  @Test
  void theWindowIsShownCaseBesideCase() throws Exception {
    Results wax = Examples.of("p6-black-wax");
    Window window = wax.windows().get(0);
    Block.Table table =
        table(Page.SHEET.of(wax, UnitSystem.FIELD), "Each case for itself, gauge, psi");

    assertThat(table.rows()).extracting(r -> r.get(0)).containsExactly("least", "most");
    assertThat(window.byCase()).hasSameSizeAs(wax.cases());
    assertThat(window.byCase().stream().mapToDouble(c -> c.least().orElseThrow().toPsi()).max())
        .hasValue(window.least().orElseThrow().gauge().value().toPsi());
    assertThat(window.byCase().stream().mapToDouble(c -> c.most().orElseThrow().toPsi()).min())
        .hasValue(window.most().orElseThrow().gauge().value().toPsi());
  }

  /**
   * A window is for a vessel full of liquid: with gas in it none of its figures may be screwed in.
   */
  @Test
  void aWindowThatGasBreaksGivesNoSetting() throws Exception {
    Results gassy = Examples.of("g1-windy-gap");
    Report page = Page.SETTINGS.of(gassy, UnitSystem.FIELD);
    String name = gassy.windows().get(0).separatorName();

    assertThat(gassy.windows().get(0).setting()).isPresent();
    assertThat(row(page, "Set to", name + ", regulator").get(1)).isEqualTo("no setting given");
    assertThat(page.toString()).doesNotContain("gauge never", "regulator set to");
    assertThat(Page.SHEET.of(gassy, UnitSystem.FIELD).toString())
        .contains("no setting is given")
        .doesNotContain("Set the regulator to", "The regulator is set to", "regulator setting");
  }

  /** A gun barrel has no regulator to screw and no float to lift: it is filled over its weir. */
  @Test
  void startingUpFollowsWhatSplitsTheFluid() throws Exception {
    String barrel = Page.SETTINGS.of(Examples.of("p4-old-windmill"), UnitSystem.FIELD).toString();
    String separator = Page.SETTINGS.of(Examples.of("p1-osage-bend"), UnitSystem.FIELD).toString();

    assertThat(barrel)
        .contains("until it runs over the weir", "leg or downcomer plugged")
        .doesNotContain("Screw the regulator", "Bypass round the dump valve", "float by hand");
    assertThat(separator)
        .contains("Screw the regulator out", "Bypass round the dump valve", "float by hand")
        .doesNotContain("over the weir");
  }

  @Test
  void aWindowWithoutASettingSaysSo() throws Exception {
    Results p1 = Examples.of("p1-osage-bend");
    Results shut =
        p1.withWindows(
            p1.windows().stream()
                .map(w -> w.withSetting(Optional.empty()).withRecommended(Optional.empty()))
                .toList());

    assertThat(row(Page.SETTINGS.of(shut, UnitSystem.FIELD), "Set to", "Separator, regulator"))
        .contains("nothing works");
  }

  @Test
  void aGaugeTableHoldsWhatItsTankHolds() throws Exception {
    Report page = Page.GAUGE.of(Examples.of("p3-coyote-creek"), UnitSystem.FIELD);

    // By hand: a 12-ft tank holds 20.14 bbl a foot, 261.9 bbl at 13 ft and 271.9 at 13 ft 6 in.
    List<String> thirteen = row(page, "Gauge table of New 300, oil, barrels from the bottom", "13");
    assertThat(thirteen.get(1)).isEqualTo("261.9");
    assertThat(thirteen.get(7)).isEqualTo("271.9");
    assertThat(thirteen).hasSize(13);
  }

  @ParameterizedTest
  @CsvSource({
    "13.9, DOWN, 13 ft 10 3/4 in",
    "13.9, UP, 13 ft 11 in",
    "14, DOWN, 14 ft 0 in",
    "0.02, NEAREST, 0 ft 1/4 in",
    "7.5, NEAREST, 7 ft 6 in",
    "11.9999, NEAREST, 12 ft 0 in"
  })
  void aTapeReadsInQuartersOfAnInch(double feet, Rounding rounding, String words) {
    assertThat(FeetInches.onTape(Length.ofFeet(feet), rounding)).isEqualTo(words);
  }
}
