package tankyard.engine.catalog;

import java.util.Objects;
import java.util.Optional;
import tankyard.engine.units.Length;
import tankyard.engine.units.Mass;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;

/**
 * A pipe.
 *
 * @param outside outside diameter
 * @param bore inside diameter, average
 * @param roughness of the wall, new
 * @param hazenWilliamsC for water only
 * @param footWeight weight of one foot
 * @param sold how it comes from the store
 */
public record Pipe(
    String id,
    String name,
    Material material,
    NominalSize nominal,
    Length outside,
    Length bore,
    Length roughness,
    double hazenWilliamsC,
    Optional<Mass> footWeight,
    Sold sold,
    RatingLaw rating,
    Source source)
    implements CatalogItem {

  /** How pipe comes: a whole number of pieces of one length, or cut to measure. */
  public record Sold(Form form, Length piece) {
    /** What one piece is called. */
    public enum Form {
      ROLL("roll"),
      JOINT("joint"),
      /** Cut to measure, or nobody said how it comes. */
      CUT("cut");

      private final String words;

      Form(String words) {
        this.words = words;
      }

      public String words() {
        return words;
      }
    }
  }

  public Pipe {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(rating, "rating");
    if (!(bore.metres() > 0) || !(outside.metres() >= bore.metres())) {
      throw new IllegalArgumentException(
          "The bore of " + name + " must be more than zero and no more than its outside diameter");
    }
    if (roughness.metres() < 0 || !(hazenWilliamsC > 0) || !(sold.piece().metres() > 0)) {
      throw new IllegalArgumentException(
          "Roughness, Hazen-Williams C and length of " + name + " can't be less than zero");
    }
  }

  /**
   * What it stands, gauge; empty where nothing is known.
   *
   * @param wall temperature of the pipe
   * @param oilInside whether oil touches the wall; a mixture does
   */
  public Optional<Computed<Pressure>> ratingAt(Temperature wall, boolean oilInside) {
    return rating.at(wall, oilInside);
  }

  /** What one metre of it holds, in m3. */
  public double boreArea() {
    return Math.PI / 4 * bore.metres() * bore.metres();
  }

  @Override
  public double order() {
    return bore.metres();
  }
}
