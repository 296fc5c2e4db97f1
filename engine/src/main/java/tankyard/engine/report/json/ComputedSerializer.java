package tankyard.engine.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import tankyard.engine.report.doc.WorkingBook;
import tankyard.engine.working.Computed;

/** A worked-out quantity: value, in its working's unit, and the number of that working. */
final class ComputedSerializer extends StdSerializer<Computed<?>> {
  /** Under this name the writer carries the book of workings along. */
  static final String BOOK = "workings";

  private static final long serialVersionUID = 1L;

  ComputedSerializer() {
    super(Computed.class, false);
  }

  @Override
  public void serialize(Computed<?> computed, JsonGenerator out, SerializerProvider provider)
      throws IOException {
    WorkingBook book = (WorkingBook) provider.getAttribute(BOOK);
    out.writeRawValue(
        "{"
            + QuantitySerializer.fields(computed.value(), computed.working().unit())
            + ", \"working\": "
            + book.number(computed.working())
            + "}");
  }
}
