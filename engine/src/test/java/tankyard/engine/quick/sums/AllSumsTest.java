package tankyard.engine.quick.sums;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import net.objecthunter.exp4j.ExpressionBuilder;
import net.objecthunter.exp4j.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickInputException;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Figures;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

class AllSumsTest {
  private static final Function MIN =
      new Function("min", 2) {
        @Override
        public double apply(double... x) {
          return Math.min(x[0], x[1]);
        }
      };
  private static final Function MAX =
      new Function("max", 2) {
        @Override
        public double apply(double... x) {
          return Math.max(x[0], x[1]);
        }
      };

  static Stream<QuickSum> sums() {
    return AllSums.list().stream();
  }

  /** Every sum by its examples alone, and with every input that may be left out but allowed. */
  static Stream<Arguments> runs() {
    List<Arguments> runs = new ArrayList<>();
    for (QuickSum sum : AllSums.list()) {
      runs.add(Arguments.of(sum.id(), sum, examples(sum)));
    }
    runs.add(run("pipe-loss", Map.of("gravity", "26 API", "viscosity", "180 cP", "k", "8")));
    runs.add(run("pipe-loss", Map.of("rate", "75 bbl/d", "gravity", "1.06", "rise", "-12 ft")));
    runs.add(run("pipe-loss", Map.of("rate", "120 bbl/d", "viscosity", "1.1")));
    runs.add(run("pipe-loss", Map.of("gravity", "32 API", "temperature", "40 F")));
    runs.add(run("fittings", Map.of("fittings", "2 x globe-valve; entrance, exit")));
    runs.add(run("barrels-per-foot", Map.of("from", "1 ft", "to", "14 ft", "rate", "28 bbl/d")));
    runs.add(run("vessel-volume", Map.of("heads", "flat")));
    runs.add(run("vessel-volume", Map.of("heads", "hemispherical")));
    runs.add(run("vessel-volume", Map.of("heads", "dished")));
    runs.add(run("vessel-volume", Map.of("heads", "conical", "cone", "12 in")));
    runs.add(run("retention", Map.of("gravity", "30 API", "temperature", "50 F")));
    runs.add(run("overflow", Map.of("all-fluid", "900 bbl/d", "slope", "0.1 %")));
    runs.add(run("gun-barrel", Map.of("weir", "16 ft 4 in")));
    runs.add(run("gun-barrel", Map.of("weir", "5 ft")));
    runs.add(run("float-pull", Map.of("weight", "0.86")));
    runs.add(run("plunger-pump", Map.of("pump-sheave", "18 in")));
    runs.add(run("voltage-drop", Map.of("wire", "2/0", "phases", "three", "amps", "28")));
    runs.add(run("heater-treater", Map.of("water", "0 bbl/d", "to", "45 F")));
    runs.add(run("pump-power", Map.of("daily", "420 bbl/d")));
    runs.add(
        run(
            "injection-limit",
            Map.of("at-no-flow", "120", "resistance", "0.25", "rate", "1000 bbl/d")));
    return runs.stream();
  }

  private static Arguments run(String id, Map<String, String> more) {
    QuickSum sum = AllSums.find(id).orElseThrow();
    Map<String, String> typed = examples(sum);
    typed.putAll(more);
    if (more.containsKey("weir")) {
      typed.remove("interface");
    }
    return Arguments.of(id + " " + more, sum, typed);
  }

  private static Map<String, String> examples(QuickSum sum) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (QuickInput input : sum.inputs()) {
      if (input.needed()) {
        typed.put(input.id(), input.example());
      }
    }
    if (sum.id().equals("gun-barrel")) {
      typed.put("interface", "10 ft");
    }
    return typed;
  }

  private static QuickResult compute(QuickSum sum, Map<String, String> typed) {
    return sum.compute(QuickValues.read(sum, typed));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("runs")
  void another_library_works_every_number_out_again_from_its_printed_inputs(
      String name, QuickSum sum, Map<String, String> typed) {
    for (QuickAnswer answer : compute(sum, typed).answers()) {
      Working working = answer.value().working();
      double number = answer.value().value().in(working.unit());
      assertThat(working.value())
          .as("%s: %s", answer.title(), working.line())
          .isCloseTo(number, within(2e-4 * Math.abs(number) + 1e-12));
      workAgain(working);
    }
  }

  private static void workAgain(Working working) {
    ExpressionBuilder builder = new ExpressionBuilder(working.formula()).functions(MIN, MAX);
    working.terms().forEach(t -> builder.variable(t.symbol()));
    var expression = builder.build();
    for (Term term : working.terms()) {
      expression.setVariable(term.symbol(), Double.parseDouble(term.digits()));
    }
    assertThat(Figures.significant(expression.evaluate(), 4))
        .as(working.line())
        .isEqualTo(working.digits());
    working.from().forEach(AllSumsTest::workAgain);
  }

  @ParameterizedTest
  @MethodSource("sums")
  void usual_values_and_examples_can_be_typed(QuickSum sum) {
    for (QuickInput input : sum.inputs()) {
      Map<String, String> typed = examples(sum);
      if (input.usual().isPresent()) {
        typed.put(input.id(), input.usual().orElseThrow());
        assertThat(compute(sum, typed).answers()).isNotEmpty();
        assertThat(input.why()).as(input.id()).isNotBlank();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("sums")
  void a_missing_input_is_named_with_an_example(QuickSum sum) {
    for (String id : examples(sum).keySet()) {
      Map<String, String> typed = examples(sum);
      typed.remove(id);
      assertThatThrownBy(() -> compute(sum, typed))
          .isInstanceOf(QuickInputException.class)
          .hasMessageContaining("--" + id);
    }
  }

  @ParameterizedTest
  @MethodSource("sums")
  void nonsense_is_refused_by_the_name_of_its_input(QuickSum sum) {
    for (QuickInput input : sum.inputs()) {
      for (String nonsense : List.of("banana", "", "12 furlongs", "1e999", "--", "NaN")) {
        Map<String, String> typed = examples(sum);
        typed.put(input.id(), nonsense);
        assertThatThrownBy(() -> compute(sum, typed))
            .as("%s %s", input.id(), nonsense)
            .isInstanceOf(QuickInputException.class)
            .hasMessageContaining("--" + input.id());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("sums")
  void absurd_numbers_end_in_an_answer_or_in_one_line(QuickSum sum) {
    for (QuickInput input : sum.inputs()) {
      for (String absurd : List.of("0", "-5", "1e-6", "1e9", "1e300", "1e-300")) {
        Map<String, String> typed = examples(sum);
        typed.put(input.id(), absurd);
        try {
          compute(sum, typed).answers().forEach(a -> a.value().working().line());
        } catch (IllegalArgumentException e) {
          assertThat(e.getMessage()).isNotBlank().doesNotContain("\n");
        }
      }
    }
  }

  @Test
  void ids_are_unique() {
    assertThat(AllSums.list().stream().map(QuickSum::id)).doesNotHaveDuplicates();
  }

  @Test
  void a_hand_sum_of_a_pipe_agrees() {
    QuickSum sum = AllSums.find("pipe-loss").orElseThrow();
    QuickResult result =
        compute(
            sum,
            Map.of(
                "rate",
                "216 bbl/d",
                "length",
                "100 ft",
                "bore",
                "1.943 in",
                "roughness",
                "0.00006 in",
                "gravity",
                "1.06 SG",
                "rise",
                "12.3 ft",
                "temperature",
                "70 F"));
    // 0.4331 * 1.06 * 12.3 = 5.647; Hazen-Williams with C 140 gives 0.064 of fresh water.
    assertThat(answer(result, "lift")).isCloseTo(5.647, within(0.02));
    assertThat(answer(result, "friction")).isCloseTo(0.064, within(0.013));
  }

  @Test
  void hazen_williams_says_where_it_is_not_for_water_in_turbulent_flow() {
    assertThat(hazenWilliams("216 bbl/d", "1.06 SG")).isEmpty();
    assertThat(hazenWilliams("5 bbl/d", "15 API"))
        .containsExactly("hazen-williams-not-water", "hazen-williams-not-turbulent");
    assertThat(hazenWilliams("216 bbl/d", "15 API")).containsExactly("hazen-williams-not-water");
    assertThat(hazenWilliams("216 bbl/d", "1.3 SG")).containsExactly("hazen-williams-not-water");
    // 4 Q/(pi d nu) is 4000 at 100 bbl/d of water at 60 degF, 1.12 cP, in 2.067 in.
    assertThat(hazenWilliams("80 bbl/d", "1 SG")).containsExactly("hazen-williams-not-turbulent");
    assertThat(hazenWilliams("120 bbl/d", "1 SG")).isEmpty();
  }

  private static List<String> hazenWilliams(String rate, String gravity) {
    Map<String, String> typed =
        Map.of("rate", rate, "length", "2000 ft", "bore", "2.067 in", "gravity", gravity);
    QuickSum sum = AllSums.find("hazen-williams").orElseThrow();
    return compute(sum, typed).cautions().stream().map(c -> c.id()).toList();
  }

  private static double answer(QuickResult result, String id) {
    return result.answers().stream()
        .filter(a -> a.id().equals(id))
        .findFirst()
        .orElseThrow()
        .number();
  }
}
