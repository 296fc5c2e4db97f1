package tankyard.app.shell;

import java.util.Locale;
import java.util.stream.Stream;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import tankyard.app.solve.Freshness;
import tankyard.app.solve.SolveService;

/** One line at the foot: what to do next, where the pointer is, how fresh the results are. */
final class StatusBar extends HBox {
  private static final String NOTHING = "\u25cb nothing is drawn yet";

  StatusBar(
      ObservableValue<String> hint,
      ObservableValue<String> cursor,
      ObservableValue<String> lastStep,
      SolveService solve) {
    getStyleClass().add("ty-status");
    Label hintLabel = label("status-hint", hint);
    hintLabel.setMaxWidth(Double.MAX_VALUE);
    hintLabel.setMinWidth(60);
    setHgrow(hintLabel, Priority.ALWAYS);
    Label cursorLabel = label("status-cursor", cursor);
    cursorLabel.getStyleClass().add("ty-figures");
    Label stepLabel = label("status-step", lastStep.map(s -> s.isEmpty() ? "" : "Last step: " + s));
    getChildren().addAll(hintLabel, cursorLabel, stepLabel, freshness(solve));
  }

  /** A green mark beside findings that say what is missing would look like all is well. */
  private static boolean isBlank(SolveService solve) {
    return solve.freshness() == Freshness.CURRENT
        && solve.latest().filter(s -> s.answer().lease().things().findAny().isPresent()).isEmpty();
  }

  private static Label label(String id, ObservableValue<String> words) {
    Label label = new Label();
    label.setId(id);
    label.textProperty().bind(words);
    return label;
  }

  private static Label freshness(SolveService solve) {
    Label label = new Label();
    label.setId("status-freshness");
    label.getStyleClass().add("ty-fresh");
    label.setMinWidth(USE_PREF_SIZE);
    Tooltip why = new Tooltip();
    Runnable show =
        () -> {
          boolean blank = isBlank(solve);
          Freshness now = blank ? Freshness.STALE : solve.freshness();
          label.setText(blank ? NOTHING : mark(now) + " " + now.words());
          label
              .getStyleClass()
              .removeAll(Stream.of(Freshness.values()).map(StatusBar::style).toList());
          label.getStyleClass().add(style(now));
          String failure = solve.failureProperty().get();
          why.setText(failure.isEmpty() ? "Every edit is worked out again by itself" : failure);
        };
    solve.freshnessProperty().addListener((o, before, after) -> show.run());
    label.setTooltip(why);
    show.run();
    return label;
  }

  /** A sign beside the colour. */
  private static String mark(Freshness freshness) {
    return switch (freshness) {
      case CURRENT -> "\u2713";
      case SOLVING -> "\u2026";
      case STALE -> "\u25cb";
      case FAILED -> "!";
    };
  }

  private static String style(Freshness freshness) {
    return "ty-" + freshness.name().toLowerCase(Locale.ROOT);
  }
}
