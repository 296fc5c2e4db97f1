package tankyard.engine.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.util.Locale;

/** One of a few choices, in small letters with dashes. */
final class ChoiceSerializer extends StdSerializer<Enum<?>> {
  private static final long serialVersionUID = 1L;

  ChoiceSerializer() {
    super(Enum.class, false);
  }

  @Override
  public void serialize(Enum<?> choice, JsonGenerator out, SerializerProvider provider)
      throws IOException {
    out.writeString(choice.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }
}
