package tankyard.engine.quick.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.sums.AllSums;

class SumCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return alone().execute(args);
  }

  private CommandLine alone() {
    return SumCommand.commandLine()
        .setOut(new PrintWriter(out, true))
        .setErr(new PrintWriter(err, true));
  }

  @Test
  void without_an_id_it_lists_every_sum() {
    assertThat(run()).isZero();
    assertThat(out.toString()).contains(AllSums.list().stream().map(QuickSum::id).toList());
  }

  @Test
  void a_sum_prints_inputs_answers_workings_and_sources() {
    int code = run("valve-loss", "--cv", "12", "--rate", "216 bbl/d", "--gravity", "1.06");

    assertThat(code).isZero();
    assertThat(err.toString()).isEmpty();
    assertThat(out.toString())
        .contains("Pressure lost in the valve", "1.169 psi", "SG*(Q/Cv)^2")
        .contains("assumed: common practice, no source")
        .contains("Q = 6.3 gpm (rate)");
  }

  @Test
  void json_holds_the_same_numbers() throws IOException {
    int code = run("valve-loss", "--cv=12", "--rate=216 bbl/d", "--gravity", "1.06 SG", "--json");

    JsonNode node = new ObjectMapper().readTree(out.toString());
    assertThat(code).isZero();
    assertThat(node.at("/sum").asText()).isEqualTo("valve-loss");
    assertThat(node.at("/answers/0/value").asDouble()).isBetween(1.168, 1.170);
    assertThat(node.at("/answers/0/unit").asText()).isEqualTo("psi");
    assertThat(node.at("/answers/0/working/digits").asText()).isEqualTo("1.169");
    assertThat(node.at("/inputs/3/assumed").asBoolean()).isTrue();
  }

  @Test
  void the_list_as_json_says_what_each_sum_takes() throws IOException {
    assertThat(run("--json")).isZero();
    JsonNode list = new ObjectMapper().readTree(out.toString());
    assertThat(list).hasSize(AllSums.list().size());
    assertThat(list.at("/0/inputs/0/bareUnit").asText()).isEqualTo("bbl/d");
  }

  @Test
  void a_wrong_unit_is_one_line_and_exit_code_2() {
    int code = run("pipe-loss", "--length", "20 psi", "--rate", "216", "--bore", "2 in");

    assertThat(code).isEqualTo(2);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString().strip().lines()).hasSize(1);
    assertThat(err.toString())
        .startsWith("sum pipe-loss: --length: \"psi\" in \"20 psi\" is no unit of length.");
  }

  @Test
  void a_missing_input_is_one_line_and_exit_code_2() {
    assertThat(run("berm", "--length", "60 ft")).isEqualTo(2);
    assertThat(err.toString().strip())
        .isEqualTo("sum berm: --width: missing: inside width, for example \"44 ft\".");
  }

  @Test
  void a_negative_value_can_be_typed() {
    assertThat(
            run("pipe-loss", "--rate", "50", "--length", "500", "--bore", "2", "--rise", "-12 ft"))
        .isZero();
    assertThat(out.toString()).contains("Note: The fall gives more than friction takes");
  }

  @Test
  void an_unknown_option_or_sum_is_one_line_and_exit_code_2() {
    assertThat(run("pipe-loss", "--lenght", "60 ft")).isEqualTo(2);
    assertThat(run("pipeloss")).isEqualTo(2);
    assertThat(err.toString().strip().lines()).hasSize(2);
    assertThat(err.toString()).contains("--lenght", "--length", "pipeloss", "pipe-loss");
  }

  @Test
  void help_names_every_input() {
    for (QuickSum sum : AllSums.list()) {
      assertThat(run(sum.id(), "--help")).isZero();
      assertThat(out.toString()).contains(sum.inputs().stream().map(i -> "--" + i.id()).toList());
    }
  }

  @Test
  void it_works_the_same_under_another_command() {
    CommandLine top = new CommandLine(CommandLine.Model.CommandSpec.create().name("top"));
    top.addSubcommand("sum", SumCommand.commandLine());
    top.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));

    assertThat(top.execute("sum", "--json", "running-rate", "--daily", "30")).isZero();
    assertThat(out.toString()).contains("\"sum\" : \"running-rate\"");
    assertThat(top.execute("sum", "running-rate", "--daily", "much")).isEqualTo(2);
    assertThat(err.toString()).contains("--daily");
  }
}
