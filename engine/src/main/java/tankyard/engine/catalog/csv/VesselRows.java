package tankyard.engine.catalog.csv;

import tankyard.engine.catalog.GunBarrelSize;
import tankyard.engine.catalog.Material;
import tankyard.engine.catalog.PumpType;
import tankyard.engine.catalog.SeparatorSize;
import tankyard.engine.catalog.Sundry;
import tankyard.engine.catalog.TankSize;
import tankyard.engine.lease.Separator;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Power;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;

/** Rows of tanks, separators, gun barrels, pumps and sundries. */
final class VesselRows {
  private VesselRows() {}

  static TankSize tank(Row row) {
    return new TankSize(
        row.id(),
        row.text("name"),
        row.word("material", Material.class),
        new Volume(row.amount("nominal_bbl", Unit.BARREL)),
        feet(row, "diameter_ft"),
        feet(row, "shell_ft"),
        feet(row, "overflow_ft"),
        row.optionalAmount("walkway_ft", Unit.FOOT).map(Length::new),
        row.optionalAmount("working_bbl", Unit.BARREL).map(Volume::new),
        row.optionalAmount("pressure_osi", Unit.OUNCE_PER_SQUARE_INCH).map(Pressure::new),
        row.optionalAmount("vacuum_osi", Unit.OUNCE_PER_SQUARE_INCH).map(Pressure::new),
        row.source());
  }

  static SeparatorSize separator(Row row) {
    return new SeparatorSize(
        row.id(),
        row.text("name"),
        row.word("shape", Separator.Shape.class),
        new Length(row.amount("diameter_in", Unit.INCH)),
        feet(row, "length_ft"),
        new Pressure(row.amount("nameplate_psi", Unit.PSI)),
        row.source());
  }

  static GunBarrelSize gunBarrel(Row row) {
    return new GunBarrelSize(
        row.id(),
        row.text("name"),
        row.word("material", Material.class),
        feet(row, "diameter_ft"),
        feet(row, "shell_ft"),
        row.source());
  }

  static PumpType pump(Row row) {
    return new PumpType(
        row.id(),
        row.text("name"),
        new LiquidRate(row.amount("rate_bpd", Unit.BARREL_PER_DAY)),
        new Pressure(row.amount("highest_psi", Unit.PSI)),
        new Power(row.amount("motor_hp", Unit.HORSEPOWER)),
        new Fraction(row.amount("efficiency", Unit.ONE)),
        row.source());
  }

  static Sundry sundry(Row row) {
    return new Sundry(
        row.id(), row.text("name"), row.word("nature", Sundry.Nature.class), row.source());
  }

  private static Length feet(Row row, String column) {
    return new Length(row.amount(column, Unit.FOOT));
  }
}
