package tankyard.engine.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;

/** A number whose unit is in its field's name. */
final class NumberSerializer extends StdSerializer<Double> {
  private static final long serialVersionUID = 1L;

  NumberSerializer() {
    super(Double.class);
  }

  @Override
  public void serialize(Double value, JsonGenerator out, SerializerProvider provider)
      throws IOException {
    out.writeRawValue(Digits.of(value));
  }
}
