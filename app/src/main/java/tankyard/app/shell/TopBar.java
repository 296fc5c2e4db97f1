package tankyard.app.shell;

import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Separator;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.util.StringConverter;
import tankyard.app.edit.LeaseStore;
import tankyard.app.edit.ViewSettings;
import tankyard.app.style.Look;
import tankyard.app.style.Shade;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.units.UnitSystem;

/** What holds for the whole window: which lease, which design case, which units, light or dark. */
final class TopBar extends HBox {
  private final LeaseStore store;
  private final ViewSettings view;
  private boolean filling;

  TopBar(LeaseStore store, ViewSettings view, Look look, Actions actions) {
    this.store = store;
    this.view = view;
    getStyleClass().add("ty-top");
    Region gap = new Region();
    setHgrow(gap, Priority.ALWAYS);
    getChildren()
        .addAll(
            leaseName(),
            rule(),
            button(actions.get("undo"), "Undo"),
            button(actions.get("redo"), "Redo"),
            gap,
            label("Design case"),
            cases(),
            rule(),
            label("Units"),
            units(),
            rule(),
            shade(look));
  }

  private Node leaseName() {
    Label name = new Label();
    name.setId("lease-name");
    name.getStyleClass().add("ty-lease-name");
    name.textProperty()
        .bind(
            Bindings.createStringBinding(
                () -> store.lease().name() + (store.isDirty() ? "  \u2022" : ""),
                store.leaseProperty(),
                store.dirtyProperty()));
    Tooltip tip = new Tooltip();
    tip.textProperty()
        .bind(
            store
                .dirtyProperty()
                .map(d -> d ? "Changed since it was last saved" : "As it was last saved"));
    name.setTooltip(tip);
    name.setMinWidth(60);
    return name;
  }

  private static Node rule() {
    return new Separator(Orientation.VERTICAL);
  }

  private static Label label(String words) {
    Label label = new Label(words);
    label.getStyleClass().add("ty-note");
    label.setMinWidth(USE_PREF_SIZE);
    return label;
  }

  private static Node button(Action action, String words) {
    Button button = new Button(words);
    button.setId("button-" + action.id());
    button.getStyleClass().add("ty-small");
    button.disableProperty().bind(action.enabled().map(can -> !can));
    button.setOnAction(e -> action.run().run());
    Tooltip tip = new Tooltip();
    tip.textProperty().bind(action.words());
    button.setTooltip(tip);
    return button;
  }

  private Node cases() {
    ComboBox<DesignCase> box = new ComboBox<>();
    box.setId("case-choice");
    box.setConverter(named());
    box.setTooltip(
        new Tooltip(
            "The map, the profile and the tables show this case. The back-pressure window always"
                + " looks at all of them."));
    Runnable fill =
        () -> {
          filling = true;
          box.getItems().setAll(store.lease().cases());
          box.getItems().stream()
              .filter(c -> c.id().equals(view.caseId()))
              .findFirst()
              .ifPresent(box::setValue);
          filling = false;
        };
    store
        .leaseProperty()
        .addListener(
            (o, before, after) -> {
              if (before == null || !before.cases().equals(after.cases())) {
                fill.run();
              }
            });
    view.caseIdProperty().addListener((o, before, after) -> fill.run());
    box.valueProperty()
        .addListener(
            (o, before, chosen) -> {
              if (chosen != null && !filling) {
                view.caseIdProperty().set(chosen.id());
              }
            });
    fill.run();
    return box;
  }

  private static StringConverter<DesignCase> named() {
    return new StringConverter<>() {
      @Override
      public String toString(DesignCase designCase) {
        return designCase == null ? "none" : designCase.name();
      }

      @Override
      public DesignCase fromString(String words) {
        throw new UnsupportedOperationException("Cases are chosen, not typed");
      }
    };
  }

  private Node units() {
    HBox both = new HBox();
    both.setAlignment(Pos.CENTER);
    Stream.of(UnitSystem.values())
        .forEach(
            system -> {
              ToggleButton button =
                  new ToggleButton(system == UnitSystem.FIELD ? "ft, psi, bbl" : "m, kPa, m\u00b3");
              button.setId("units-" + system.name().toLowerCase(java.util.Locale.ROOT));
              button
                  .getStyleClass()
                  .addAll("ty-small", both.getChildren().isEmpty() ? "left-pill" : "right-pill");
              button.setTooltip(
                  new Tooltip(system.words() + ". What you type keeps its own unit either way."));
              button.setSelected(view.units() == system);
              button.setOnAction(
                  e -> {
                    view.unitsProperty().set(system);
                    button.setSelected(true);
                  });
              view.unitsProperty().addListener((o, a, b) -> button.setSelected(b == system));
              both.getChildren().add(button);
            });
    return both;
  }

  private static Node shade(Look look) {
    Button button = new Button();
    button.setId("shade");
    button.getStyleClass().add("ty-small");
    button.setTooltip(new Tooltip("Dark is easier in a dark cab, light in the sun"));
    button.textProperty().bind(look.shadeProperty().map(s -> s == Shade.DARK ? "Light" : "Dark"));
    button.setOnAction(
        e -> look.shadeProperty().set(look.shade() == Shade.DARK ? Shade.LIGHT : Shade.DARK));
    return button;
  }
}
