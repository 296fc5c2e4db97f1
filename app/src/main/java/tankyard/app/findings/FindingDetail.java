package tankyard.app.findings;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The finding that is picked: its way out, its number's working and its source. */
final class FindingDetail extends ScrollPane {
  private final FindingsViewModel model;
  private final VBox page = new VBox();

  FindingDetail(FindingsViewModel model) {
    this.model = model;
    page.getStyleClass().add("finding-detail");
    page.setId("finding-detail");
    setContent(page);
    setFitToWidth(true);
    getStyleClass().add("panel-scroll");
    model.pickedProperty().addListener((o, was, is) -> show(is));
    show(model.pickedProperty().get());
  }

  private void show(FindingRow row) {
    page.getChildren().clear();
    if (row == null) {
      page.getChildren().add(styled("Pick a finding to see how to mend it.", "finding-muted"));
      return;
    }
    page.getChildren().addAll(head(row), styled(row.words(), "finding-words"));
    if (!row.wayOut().isEmpty()) {
      page.getChildren().add(styled("Way out", "finding-heading"));
      for (int i = 0; i < row.wayOut().size(); i++) {
        String number = row.wayOut().size() == 1 ? "" : (i + 1) + ".  ";
        page.getChildren().add(styled(number + row.wayOut().get(i), "finding-way"));
      }
    }
    row.working().ifPresent(w -> page.getChildren().add(workingButton(row)));
    if (!row.source().isEmpty()) {
      page.getChildren().add(styled("Source: " + row.source(), "finding-muted"));
    }
    page.getChildren().add(styled("Check: " + row.id(), "finding-muted"));
  }

  private Node head(FindingRow row) {
    Label severity = new Label(SeverityLook.words(row.severity()));
    severity.getStyleClass().addAll("severity", SeverityLook.of(row.severity()).styleClass());
    severity.setMinWidth(Region.USE_PREF_SIZE);
    FlowPane head = new FlowPane(8, 2);
    head.getChildren().addAll(severity, thing(row));
    if (!row.caseName().isEmpty()) {
      head.getChildren().add(styled(row.caseName(), "finding-case"));
    }
    head.getStyleClass().add("finding-head");
    return head;
  }

  private Node thing(FindingRow row) {
    if (row.thingId().isEmpty()) {
      return styled(row.thing(), "finding-thing");
    }
    Hyperlink link = new Hyperlink(row.thing());
    link.setId("finding-thing");
    link.getStyleClass().add("finding-thing");
    link.setOnAction(e -> model.showOnMap(row));
    return link;
  }

  private Button workingButton(FindingRow row) {
    Button button = new Button("Show the working");
    button.setId("finding-working");
    button.getStyleClass().add("small");
    button.setOnAction(e -> model.show(row.working().orElseThrow()));
    return button;
  }

  private static Label styled(String words, String styleClass) {
    Label label = new Label(words);
    label.getStyleClass().add(styleClass);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }
}
