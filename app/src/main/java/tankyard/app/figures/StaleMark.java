package tankyard.app.figures;

import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;
import tankyard.app.solve.Freshness;

/**
 * Says over a panel that its results are not of the lease on the screen. While a new answer is
 * under way nothing is said: it comes before one could read it.
 */
public final class StaleMark extends Label {
  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

  /**
   * A mark for one panel.
   *
   * @param results paled while they are stale
   */
  public StaleMark(Node results, ObservableValue<Freshness> freshness) {
    getStyleClass().add("stale-mark");
    setWrapText(true);
    managedProperty().bind(visibleProperty());
    freshness.addListener((o, was, is) -> show(results, is));
    show(results, freshness.getValue());
  }

  private void show(Node results, Freshness now) {
    boolean stale = now == Freshness.STALE || now == Freshness.FAILED;
    results.pseudoClassStateChanged(STALE, stale);
    setVisible(stale);
    setText(stale ? words(now) : "");
  }

  private static String words(Freshness now) {
    return (now == Freshness.FAILED ? "Old results: the lease " : "These ") + now.words() + ".";
  }
}
