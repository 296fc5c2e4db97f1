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
  private static final PseudoClass OLD = PseudoClass.getPseudoClass("old");

  BillTable(TakeoffViewModel model) {
    super(model.rows());
    setId("bill-table");
    getStyleClass().addAll("figure-table", "dense");
    setPlaceholder(new Label(""));
    getColumns().add(Columns.words("Item", 226, BillRow::text));
    getColumns().add(Columns.number("Quantity", 84, BillRow::quantity, BillRow::quantityDigits));
    getColumns().add(Columns.words("Unit", 50, BillRow::unit));
    TableColumn<BillRow, BillRow> price =
        Columns.number("Price", 92, BillRow::unitPrice, BillRow::price);
    price.getStyleClass().add("price-column");
    getColumns().add(price);
    getColumns().add(Columns.number("Total", 92, r -> r.sum().doubleValue(), BillRow::total));
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
