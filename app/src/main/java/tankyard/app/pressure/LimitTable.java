package tankyard.app.pressure;

import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import tankyard.app.figures.Columns;
import tankyard.engine.units.Figures;

/** Every limit of every case, sortable; picking a line shows its thing on the map. */
final class LimitTable extends TableView<LimitRow> {
  LimitTable(PressureViewModel model) {
    super(model.limits());
    setId("pressure-limits");
    getStyleClass().addAll("figure-table", "dense");
    setPlaceholder(new Label("No limit is known yet."));
    getColumns().add(Columns.words("Limit", 68, LimitRow::end));
    TableColumn<LimitRow, LimitRow> gauge =
        Columns.worked(
            model.unit(),
            56,
            LimitRow::gauge,
            LimitRow::gaugeDigits,
            LimitRow::working,
            w -> model.show(() -> w));
    getColumns().add(gauge);
    getColumns().add(Columns.words("Because of", 190, LimitRow::name));
    getColumns().add(Columns.words("Case", 130, LimitRow::caseName));
    getColumns().add(Columns.words("Kind", 100, LimitRow::kind));
    getColumns().add(Columns.number("Static", 64, LimitRow::lift, r -> tenth(r.lift())));
    getColumns().add(Columns.number("Friction", 70, LimitRow::friction, r -> tenth(r.friction())));
    getColumns().add(Columns.number("Valve", 60, LimitRow::valve, r -> tenth(r.valve())));
    getColumns().add(Columns.number("Margin", 64, LimitRow::margin, r -> tenth(r.margin())));
    getColumns().add(Columns.words("Separator", 100, LimitRow::separator));
    getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                model.select(is.thingId());
              }
            });
    model.picturesProperty().addListener((o, was, is) -> gauge.setText(model.unit()));
  }

  private static String tenth(double value) {
    return Figures.decimals(value, 1);
  }
}
