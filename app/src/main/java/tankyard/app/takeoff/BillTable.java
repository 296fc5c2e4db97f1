package tankyard.app.takeoff;

import java.util.Locale;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import tankyard.app.figures.Columns;
import tankyard.engine.pricing.BillLine;

/** The lines of the bill; picking one picks what caused it on the map. */
final class BillTable extends TableView<BillRow> {
  private static final double ITEM_LEAST = 140;
  private static final double ITEM_MOST = 250;

  /** The columns of figures, the scroll bar and a part of what a line is for. */
  private static final double FIGURES = 430;

  private static final PseudoClass OLD = PseudoClass.getPseudoClass("old");

  BillTable(TakeoffViewModel model) {
    super(model.rows());
    setId("bill-table");
    getStyleClass().addAll("figure-table", "dense");
    setPlaceholder(new Label(""));
    TableColumn<BillRow, String> item = Columns.words("Item", ITEM_LEAST, BillRow::text);
    getColumns().add(item);
    getColumns().add(Columns.number("Quantity", 98, BillRow::quantity, BillTable::quantity));
    TableColumn<BillRow, BillRow> price =
        Columns.number("Price", 92, BillRow::unitPrice, BillRow::price);
    price.getStyleClass().add("price-column");
    TableColumn<BillRow, BillRow> total =
        Columns.number("Total", 86, r -> r.sum().doubleValue(), BillRow::total);
    getColumns().add(price);
    getColumns().add(total);
    price.textProperty().bind(model.currencyProperty().map(c -> "Price" + c));
    total.textProperty().bind(model.currencyProperty().map(c -> "Total" + c));
    // What is bought gives way first, so that no figure is out of sight.
    widthProperty()
        .addListener(
            (o, was, is) ->
                item.setPrefWidth(
                    Math.max(ITEM_LEAST, Math.min(ITEM_MOST, is.doubleValue() - FIGURES))));
    getColumns().add(Columns.words("For", 170, BillRow::forWhat));
    getColumns().add(Columns.words("Status", 74, BillRow::status));
    getColumns().add(Columns.words("Remark", 240, BillRow::remark));
    setRowFactory(table -> new Row());
    getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                model.pick(is);
              }
            });
  }

  private static String quantity(BillRow row) {
    return row.quantityDigits() + " " + row.unit();
  }

  /** Says by its look, beside its words, how the line stands in the sum. */
  private static final class Row extends TableRow<BillRow> {
    @Override
    protected void updateItem(BillRow row, boolean empty) {
      super.updateItem(row, empty);
      boolean none = empty || row == null;
      pseudoClassStateChanged(OLD, !none && row.stale());
      for (BillLine.State state : BillLine.State.values()) {
        PseudoClass mark = PseudoClass.getPseudoClass(state.name().toLowerCase(Locale.ROOT));
        pseudoClassStateChanged(mark, !none && row.state() == state);
      }
    }
  }
}
