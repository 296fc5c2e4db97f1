package tankyard.engine.catalog.csv;

import tankyard.engine.catalog.FloatType;
import tankyard.engine.catalog.RegulatorType;
import tankyard.engine.catalog.ValveType;
import tankyard.engine.units.Cv;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;

/** Rows of valves, regulators and floats. */
final class ValveRows {
  private ValveRows() {}

  static ValveType valve(Row row) {
    return new ValveType(
        row.id(),
        row.text("name"),
        row.word("duty", ValveType.Duty.class),
        row.optionalNominal("nominal_in"),
        row.optionalAmount("cv", Unit.CV).map(Cv::new),
        row.optionalAmount("port_in", Unit.INCH).map(Length::new),
        row.optionalAmount("lever", Unit.ONE).map(Fraction::new),
        FittingRows.loss(row),
        row.optionalAmount("rating_psi", Unit.PSI).map(Pressure::new),
        row.source());
  }

  static RegulatorType regulator(Row row) {
    return new RegulatorType(
        row.id(),
        row.text("name"),
        row.nominal("nominal_in"),
        new Pressure(row.amount("range_low_psi", Unit.PSI)),
        new Pressure(row.amount("range_high_psi", Unit.PSI)),
        row.optionalAmount("build_up_psi", Unit.PSI).map(Pressure::new),
        row.optionalAmount("cv", Unit.CV).map(Cv::new),
        row.source());
  }

  static FloatType floatBall(Row row) {
    return new FloatType(
        row.id(),
        row.text("name"),
        new Length(row.amount("diameter_in", Unit.INCH)),
        new Gravity(row.amount("weight_sg", Unit.SPECIFIC_GRAVITY)),
        new Fraction(row.amount("lever", Unit.ONE)),
        row.source());
  }
}
