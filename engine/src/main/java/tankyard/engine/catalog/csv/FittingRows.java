package tankyard.engine.catalog.csv;

import java.util.Optional;
import tankyard.engine.catalog.Fitting;
import tankyard.engine.catalog.Loss;
import tankyard.engine.catalog.Material;

/** Rows of fittings, and the columns that say what a fitting or hand valve loses. */
final class FittingRows {
  private FittingRows() {}

  static Fitting fitting(Row row) {
    return new Fitting(
        row.id(),
        row.text("name"),
        row.word("part", Fitting.Part.class),
        row.optionalWord("material", Material.class),
        row.optionalNominal("nominal_in"),
        loss(row).orElseThrow(() -> row.wrong("A fitting needs its loss: l_over_d, k or k1,ki,kd")),
        row.source());
  }

  /** One of: {@code l_over_d}; {@code k}; {@code k1}, {@code ki} and {@code kd}. */
  static Optional<Loss> loss(Row row) {
    boolean diameters = row.optionalText("l_over_d").isPresent();
    boolean heads = row.optionalText("k").isPresent();
    boolean darby = row.optionalText("k1").isPresent();
    if ((diameters ? 1 : 0) + (heads ? 1 : 0) + (darby ? 1 : 0) > 1) {
      throw row.wrong("Give the loss one way: l_over_d, k, or k1 with ki and kd.");
    }
    if (diameters) {
      return Optional.of(new Loss.Diameters(row.number("l_over_d")));
    }
    if (heads) {
      return Optional.of(new Loss.VelocityHeads(row.number("k")));
    }
    return darby
        ? Optional.of(new Loss.ThreeK(row.number("k1"), row.number("ki"), row.number("kd")))
        : Optional.empty();
  }
}
