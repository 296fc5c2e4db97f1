package tankyard.app.sums;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import tankyard.app.field.Drafts;
import tankyard.app.field.Form;
import tankyard.app.field.FormBuilder;
import tankyard.app.field.FormHost;
import tankyard.app.field.NameEntry;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Unit;

/** Makes a form from what a sum says it takes. */
final class SumForm {
  private SumForm() {}

  static Form<TypedSum> of(QuickSum sum, FormHost<TypedSum> host, Drafts drafts) {
    FormBuilder<TypedSum> form = new FormBuilder<>(host, drafts, sum.id(), sum::title);
    for (QuickInput input : sum.inputs()) {
      if (input.choices().isEmpty()) {
        typed(form, sum, input);
      } else {
        chosen(form, sum, input);
      }
    }
    return form.build();
  }

  private static void typed(FormBuilder<TypedSum> form, QuickSum sum, QuickInput input) {
    NameEntry<TypedSum> entry =
        form.words(id(sum, input), capital(input.title()), why(input), TypedSum.input(input.id()));
    entry.prompt(prompt(input)).check(text -> check(sum, input, text));
    if (input.bare().isPresent()) {
      entry.number();
    } else {
      entry.wide();
    }
  }

  private static void chosen(FormBuilder<TypedSum> form, QuickSum sum, QuickInput input) {
    String usual = input.usual().orElse(input.choices().get(0));
    form.choice(
            id(sum, input),
            capital(input.title()),
            why(input),
            TypedSum.input(input.id()).as(text -> text.isEmpty() ? usual : text, text -> text),
            input.choices())
        .wide();
  }

  private static String id(QuickSum sum, QuickInput input) {
    return "sum-" + sum.id() + "-" + input.id();
  }

  private static String prompt(QuickInput input) {
    return input
        .usual()
        .map(usual -> usual + " assumed")
        .orElse(input.needed() ? "e.g. " + input.example() : "may be left out");
  }

  private static String why(QuickInput input) {
    String unit =
        input
            .bare()
            .map(Unit::symbol)
            .filter(symbol -> !symbol.isEmpty())
            .map(symbol -> " A bare number is taken in " + symbol + ".")
            .orElse("");
    String usual =
        input.usual().map(u -> " If nothing is typed: " + u + ", " + input.why() + ".").orElse("");
    return capital(input.title()) + "." + unit + usual;
  }

  /** Reads this one input as the sum will read it; only its own fault counts here. */
  private static void check(QuickSum sum, QuickInput input, String text) {
    Map<String, String> all = examples(sum);
    all.put(input.id(), text);
    try {
      QuickValues.read(sum, all);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(capital(withoutName(e.getMessage())), e);
    }
  }

  private static Map<String, String> examples(QuickSum sum) {
    return new HashMap<>(
        sum.inputs().stream()
            .filter(QuickInput::needed)
            .collect(Collectors.toMap(QuickInput::id, QuickInput::example)));
  }

  /** What must be typed; where a sum takes one of two values, the first of them. */
  static TypedSum example(QuickSum sum) {
    Map<String, String> needed = examples(sum);
    if (answers(sum, needed)) {
      return new TypedSum(needed);
    }
    for (QuickInput input : sum.inputs()) {
      if (!input.needed() && input.usual().isEmpty()) {
        Map<String, String> more = new HashMap<>(needed);
        more.put(input.id(), input.example());
        if (answers(sum, more)) {
          return new TypedSum(more);
        }
      }
    }
    return new TypedSum(needed);
  }

  private static boolean answers(QuickSum sum, Map<String, String> texts) {
    try {
      return !sum.compute(QuickValues.read(sum, texts)).answers().isEmpty();
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  /** On the command line an input is named with two hyphens; here by the words beside its field. */
  static String named(QuickSum sum, String message) {
    String words = message;
    for (QuickInput input : sum.inputs()) {
      words = words.replace("--" + input.id(), input.title());
    }
    return capital(words);
  }

  private static String withoutName(String message) {
    List<String> parts = List.of(message.split(": ", 2));
    return parts.size() == 2 && parts.get(0).startsWith("--") ? parts.get(1) : message;
  }

  static String capital(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
