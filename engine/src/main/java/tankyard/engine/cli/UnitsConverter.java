package tankyard.engine.cli;

import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import tankyard.engine.units.UnitSystem;

/** A unit system as it is typed. */
final class UnitsConverter implements ITypeConverter<UnitSystem> {
  @Override
  public UnitSystem convert(String typed) {
    return switch (typed.toLowerCase(Locale.ROOT)) {
      case "field" -> UnitSystem.FIELD;
      case "metric" -> UnitSystem.METRIC;
      default ->
          throw new TypeConversionException("found \"" + typed + "\", neither field nor metric");
    };
  }
}
