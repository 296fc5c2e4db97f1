package tankyard.app.sums;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import tankyard.app.field.Drafts;
import tankyard.app.field.Form;
import tankyard.app.field.FormHost;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Working;

/** The sum that is picked, what was typed for it, and its answer. */
public final class SumsViewModel implements FormHost<TypedSum> {
  private final List<QuickSum> sums;
  private final Consumer<Working> showWorking;
  private final Drafts drafts = new Drafts();
  private final Map<String, TypedSum> typed = new HashMap<>();
  private final ObjectProperty<QuickSum> picked = new SimpleObjectProperty<>(this, "picked");
  private final ReadOnlyObjectWrapper<Form<TypedSum>> form =
      new ReadOnlyObjectWrapper<>(this, "form");
  private final ReadOnlyObjectWrapper<SumAnswer> answer =
      new ReadOnlyObjectWrapper<>(this, "answer", SumAnswer.none(""));

  /**
   * The first sum is picked.
   *
   * @param sums at least one
   */
  public SumsViewModel(List<QuickSum> sums, Consumer<Working> showWorking) {
    this.sums = List.copyOf(sums);
    this.showWorking = showWorking;
    picked.addListener((o, was, is) -> open(is));
    picked.set(this.sums.get(0));
  }

  List<QuickSum> sums() {
    return sums;
  }

  ObjectProperty<QuickSum> pickedProperty() {
    return picked;
  }

  ReadOnlyObjectProperty<Form<TypedSum>> formProperty() {
    return form.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<SumAnswer> answerProperty() {
    return answer.getReadOnlyProperty();
  }

  void show(Working working) {
    showWorking.accept(working);
  }

  /** Types an example of every value the sum needs, to see how it goes. */
  void fillExample() {
    change("example", "example", before -> SumForm.example(picked.get()));
  }

  /** Back to nothing typed. */
  void clear() {
    change("clear", "clear", before -> TypedSum.nothing());
  }

  @Override
  public void change(String name, String mergeKey, UnaryOperator<TypedSum> change) {
    QuickSum sum = picked.get();
    typed.put(sum.id(), change.apply(now(sum)));
    form.get().show(now(sum));
    answer.set(work(sum));
  }

  @Override
  public UnitSystem units() {
    return UnitSystem.FIELD;
  }

  private TypedSum now(QuickSum sum) {
    return typed.getOrDefault(sum.id(), TypedSum.nothing());
  }

  private void open(QuickSum sum) {
    Form<TypedSum> made = SumForm.of(sum, this, drafts);
    made.show(now(sum));
    form.set(made);
    answer.set(work(sum));
  }

  private SumAnswer work(QuickSum sum) {
    Map<String, String> texts = now(sum).texts();
    List<String> missing =
        sum.inputs().stream()
            .filter(i -> i.needed() && !texts.containsKey(i.id()))
            .map(QuickInput::title)
            .toList();
    if (!missing.isEmpty()) {
      return SumAnswer.none("Still to be typed: " + String.join("; ", missing) + ".");
    }
    try {
      return answer(sum.compute(QuickValues.read(sum, texts)));
    } catch (IllegalArgumentException e) {
      return SumAnswer.none(SumForm.named(sum, e.getMessage()));
    }
  }

  private static SumAnswer answer(QuickResult result) {
    return new SumAnswer(
        "",
        result.answers().stream().map(SumsViewModel::number).toList(),
        result.cautions().stream().map(Caution::words).toList());
  }

  private static SumAnswer.Number number(QuickAnswer answer) {
    return new SumAnswer.Number(answer.title(), answer.print(), answer.value()::working);
  }
}
