package tankyard.engine.report.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import tankyard.engine.study.LineProfile;
import tankyard.engine.study.LineResult;

/** How each kind of value is written. */
final class Mapping {
  private Mapping() {}

  static ObjectMapper mapper() {
    SimpleModule ours = new SimpleModule("results");
    ours.addSerializer(new QuantitySerializer());
    ours.addSerializer(new ComputedSerializer());
    ours.addSerializer(new WorkingSerializer());
    ours.addSerializer(new WorkingsSerializer());
    ours.addSerializer(new ChoiceSerializer());
    ours.addSerializer(Double.class, new NumberSerializer());
    ours.addSerializer(double.class, new NumberSerializer());
    return JsonMapper.builder()
        .addModules(new Jdk8Module(), new JavaTimeModule(), ours)
        .addMixIn(LineResult.class, ProfileAsPoints.OfLine.class)
        .addMixIn(LineProfile.class, ProfileAsPoints.OfProfile.class)
        .disable(MapperFeature.AUTO_DETECT_IS_GETTERS)
        .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
        .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
        .defaultPropertyInclusion(
            JsonInclude.Value.construct(JsonInclude.Include.NON_ABSENT, JsonInclude.Include.ALWAYS))
        .build();
  }
}
