package tankyard.engine.catalog.csv;

import tankyard.engine.catalog.FibreglassRating;
import tankyard.engine.catalog.Material;
import tankyard.engine.catalog.Pipe;
import tankyard.engine.catalog.PolyRating;
import tankyard.engine.catalog.PvcRating;
import tankyard.engine.catalog.RatingLaw;
import tankyard.engine.catalog.SteelRating;
import tankyard.engine.units.Length;
import tankyard.engine.units.Mass;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;

/** Rows of pipe, by material: each material has its own way to a rating. */
final class PipeRows {
  private PipeRows() {}

  static Pipe poly(Row row) {
    Pressure stress = new Pressure(row.amount("stress_psi", Unit.PSI));
    return pipe(row, Material.POLYETHYLENE, new PolyRating(stress, row.number("dr")));
  }

  static Pipe steel(Row row) {
    RatingLaw rating =
        new SteelRating(
            new Pressure(row.amount("yield_psi", Unit.PSI)),
            inches(row, "outside_in"),
            inches(row, "wall_in"),
            inches(row, "thread_in"),
            new Pressure(row.amount("fittings_psi", Unit.PSI)),
            row.source("fittings_source", "fittings_provenance"));
    return pipe(row, Material.STEEL, rating);
  }

  static Pipe pvc(Row row) {
    RatingLaw rating =
        new PvcRating(
            new Pressure(row.amount("stress_psi", Unit.PSI)),
            inches(row, "outside_in"),
            inches(row, "wall_in"));
    return pipe(row, Material.PVC, rating);
  }

  static Pipe fibreglass(Row row) {
    RatingLaw rating = new FibreglassRating(new Pressure(row.amount("rating_psi", Unit.PSI)));
    return pipe(row, Material.FIBREGLASS, rating);
  }

  private static Pipe pipe(Row row, Material material, RatingLaw rating) {
    return new Pipe(
        row.id(),
        row.text("name"),
        material,
        row.nominal("nominal_in"),
        inches(row, "outside_in"),
        inches(row, "bore_in"),
        new Length(row.amount("roughness_ft", Unit.FOOT)),
        row.number("hazen_williams_c"),
        row.optionalAmount("foot_lb", Unit.POUND).map(Mass::new),
        new Pipe.Sold(
            row.word("sold_by", Pipe.Sold.Form.class),
            new Length(row.amount("piece_ft", Unit.FOOT))),
        rating,
        row.source());
  }

  private static Length inches(Row row, String column) {
    return new Length(row.amount(column, Unit.INCH));
  }
}
