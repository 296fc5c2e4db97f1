package tankyard.app.field;

import java.util.Objects;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Draws a form: headings, labels and fields in two columns, errors beneath their field. */
public final class FormView extends VBox {
  private final ReadOnlyStringWrapper hint = new ReadOnlyStringWrapper(this, "hint", "");

  public FormView(Form<?> form) {
    getStyleClass().add("form");
    getStylesheets().add(stylesheet());
    for (Block<?> block : form.blocks()) {
      if (!block.title().isEmpty() || !block.actions().isEmpty()) {
        getChildren().add(heading(block));
      }
      getChildren().add(block(block));
    }
  }

  /** Why the field that has the keyboard matters; empty while none has. */
  public ReadOnlyStringProperty hintProperty() {
    return hint.getReadOnlyProperty();
  }

  public static String stylesheet() {
    return Objects.requireNonNull(FormView.class.getResource("field.css")).toExternalForm();
  }

  /** A heading in the style of a form's own, for what stands below the form. */
  public static Label heading(String words) {
    Label heading = new Label(words);
    heading.getStyleClass().add("form-heading");
    heading.setMaxWidth(Double.MAX_VALUE);
    return heading;
  }

  private static Node heading(Block<?> block) {
    Label words = new Label(block.title());
    words.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(words, Priority.ALWAYS);
    HBox heading = new HBox(words);
    heading.getStyleClass().add("form-heading");
    block.actions().forEach(action -> heading.getChildren().add(button(action)));
    return heading;
  }

  /** A button in the style of a form's own. */
  public static Button button(FormAction action) {
    Button button = new Button(action.words());
    button.setId(action.id());
    button.getStyleClass().add("small");
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setTooltip(Describe.tooltip(action.why()));
    button.setOnAction(e -> action.run().run());
    return button;
  }

  private Node block(Block<?> block) {
    if (block instanceof Rows<?> rows) {
      return RowsView.of(rows, this);
    }
    return SectionView.of((Section<?>) block, this);
  }

  /** The control of an entry, reporting to the hint line. */
  Control control(Entry<?> entry) {
    Control control = bare(entry);
    control.focusedProperty().addListener((o, was, is) -> hint.set(is ? entry.why() : ""));
    return control;
  }

  private static Control bare(Entry<?> entry) {
    if (entry instanceof ChoiceEntry<?, ?> choice) {
      return new ChoiceField<>(choice);
    }
    if (entry instanceof NameEntry<?> name && name.hasManyLines()) {
      TextArea area = new TextArea();
      area.setPrefRowCount(3);
      area.setWrapText(true);
      TypedField.bind(area, name);
      return area;
    }
    return new TypedField((TypedEntry<?>) entry);
  }
}
