package tankyard.engine.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import tankyard.engine.report.doc.NumberedWorking;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** All workings with the digits that a reader sees, each once. */
final class WorkingsSerializer extends StdSerializer<ResultsJson.Workings> {
  private static final long serialVersionUID = 1L;

  WorkingsSerializer() {
    super(ResultsJson.Workings.class);
  }

  @Override
  public void serialize(
      ResultsJson.Workings workings, JsonGenerator out, SerializerProvider provider)
      throws IOException {
    out.writeStartArray();
    for (NumberedWorking numbered : workings.book().all()) {
      write(numbered, out);
    }
    out.writeEndArray();
  }

  private static void write(NumberedWorking numbered, JsonGenerator out) throws IOException {
    Working working = numbered.working();
    out.writeStartObject();
    out.writeNumberField("number", numbered.number());
    out.writeStringField("title", working.title());
    out.writeStringField("symbol", working.symbol());
    out.writeStringField("formula", working.formula());
    out.writeArrayFieldStart("inputs");
    for (Term term : working.terms()) {
      input(term, out);
    }
    out.writeEndArray();
    out.writeFieldName("result");
    out.writeRawValue(
        "{\"value\": " + working.digits() + ", \"unit\": \"" + working.unit().symbol() + "\"}");
    source(working.source(), out);
    out.writeArrayFieldStart("from");
    for (int number : numbered.from()) {
      out.writeNumber(number);
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private static void input(Term term, JsonGenerator out) throws IOException {
    out.writeStartObject();
    out.writeStringField("symbol", term.symbol());
    out.writeStringField("name", term.name());
    out.writeFieldName("value");
    out.writeRawValue(term.digits());
    out.writeStringField("unit", term.unit().symbol());
    out.writeEndObject();
  }

  private static void source(Source source, JsonGenerator out) throws IOException {
    out.writeObjectFieldStart("source");
    out.writeStringField("kind", source.kind().words());
    out.writeStringField("citation", source.citation());
    out.writeEndObject();
  }
}
