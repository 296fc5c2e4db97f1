package tankyard.engine.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import tankyard.engine.report.doc.WorkingBook;
import tankyard.engine.working.Working;

/** A working inside a result, by its number. */
final class WorkingSerializer extends StdSerializer<Working> {
  private static final long serialVersionUID = 1L;

  WorkingSerializer() {
    super(Working.class);
  }

  @Override
  public void serialize(Working working, JsonGenerator out, SerializerProvider provider)
      throws IOException {
    WorkingBook book = (WorkingBook) provider.getAttribute(ComputedSerializer.BOOK);
    out.writeNumber(book.number(working));
  }
}
