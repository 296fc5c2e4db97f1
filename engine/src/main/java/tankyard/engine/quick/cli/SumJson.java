package tankyard.engine.quick.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValue;
import tankyard.engine.quick.sums.AllSums;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** A quick sum as a program reads it. */
final class SumJson {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private SumJson() {}

  static String list() {
    ArrayNode all = MAPPER.createArrayNode();
    for (QuickSum sum : AllSums.list()) {
      ObjectNode node = all.addObject();
      node.put("sum", sum.id()).put("title", sum.title()).put("about", sum.about());
      ArrayNode inputs = node.putArray("inputs");
      sum.inputs().forEach(i -> describe(inputs.addObject(), i));
    }
    return print(all);
  }

  static String of(Solved solved) {
    ObjectNode node = MAPPER.createObjectNode();
    node.put("sum", solved.sum().id()).put("title", solved.sum().title());
    ArrayNode inputs = node.putArray("inputs");
    solved.values().all().forEach(v -> input(inputs.addObject(), v));
    ArrayNode answers = node.putArray("answers");
    solved.result().answers().forEach(a -> answer(answers.addObject(), a));
    ArrayNode cautions = node.putArray("cautions");
    for (Caution caution : solved.result().cautions()) {
      cautions.addObject().put("id", caution.id()).put("words", caution.words());
    }
    return print(node);
  }

  private static void describe(ObjectNode node, QuickInput input) {
    node.put("id", input.id()).put("title", input.title()).put("needed", input.needed());
    input.dimension().ifPresent(d -> node.put("measures", d.words()));
    input.bare().ifPresent(u -> node.put("bareUnit", u.symbol()));
    input.usual().ifPresent(u -> node.put("usual", u).put("why", input.why()));
    node.put("example", input.example());
    if (!input.choices().isEmpty()) {
      ArrayNode choices = node.putArray("choices");
      input.choices().forEach(choices::add);
    }
  }

  private static void input(ObjectNode node, QuickValue value) {
    node.put("id", value.input().id()).put("title", value.input().title());
    node.put("text", value.text()).put("assumed", value.assumed());
    value.amount().ifPresent(a -> node.put("value", a.value()).put("unit", a.unit().symbol()));
  }

  private static void answer(ObjectNode node, QuickAnswer answer) {
    node.put("id", answer.id()).put("title", answer.title());
    node.put("value", answer.number()).put("unit", answer.unit().symbol());
    node.put("si", answer.value().value().si());
    working(node.putObject("working"), answer.value().working());
  }

  private static void working(ObjectNode node, Working working) {
    node.put("title", working.title()).put("symbol", working.symbol());
    node.put("formula", working.formula());
    ArrayNode terms = node.putArray("terms");
    for (Term term : working.terms()) {
      terms
          .addObject()
          .put("symbol", term.symbol())
          .put("name", term.name())
          .put("digits", term.digits())
          .put("unit", term.unit().symbol());
    }
    node.put("digits", working.digits()).put("unit", working.unit().symbol());
    node.put("source", working.source().line());
    ArrayNode from = node.putArray("from");
    working.from().forEach(w -> working(from.addObject(), w));
  }

  private static String print(Object node) {
    try {
      return MAPPER.writeValueAsString(node) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("Numbers and words could not be written as JSON", e);
    }
  }
}
