package tankyard.engine.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A day as it is typed. */
final class DayConverter implements ITypeConverter<LocalDate> {
  @Override
  public LocalDate convert(String typed) {
    try {
      return LocalDate.parse(typed);
    } catch (DateTimeParseException e) {
      throw new TypeConversionException(
          "found \"" + typed + "\", not a day such as 2026-07-01 (year, month, day)");
    }
  }
}
