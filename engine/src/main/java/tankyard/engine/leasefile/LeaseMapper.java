package tankyard.engine.leasefile;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import tankyard.engine.lease.Lease;
import tankyard.engine.units.Quantity;

/**
 * Turns a lease into a JSON tree and back. The lease package knows nothing of it: what Jackson must
 * be told is told here.
 */
final class LeaseMapper {
  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .addModule(new Jdk8Module())
          .addModule(new JavaTimeModule())
          .addModule(quantities())
          .annotationIntrospector(new PlainWords())
          .addMixIn(Lease.class, WithoutUnknowns.class)
          // What is empty is left out, so that a file shows only what somebody said.
          .defaultPropertyInclusion(
              JsonInclude.Value.construct(
                  JsonInclude.Include.NON_EMPTY, JsonInclude.Include.ALWAYS))
          .withConfigOverride(
              List.class, o -> o.setSetterInfo(JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY)))
          .withConfigOverride(
              String.class, o -> o.setSetterInfo(JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY)))
          .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
          .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .build();

  private LeaseMapper() {}

  static ObjectNode toTree(Lease lease) {
    return MAPPER.valueToTree(lease);
  }

  static Lease fromTree(JsonNode tree) throws JsonProcessingException {
    return MAPPER.treeToValue(tree, Lease.class);
  }

  /** A mapper set up alike, for trees alone. */
  static ObjectMapper mapper() {
    return MAPPER;
  }

  /** The word a lease file uses for an enum's constant: {@code flow-line} for FLOW_LINE. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static SimpleModule quantities() {
    SimpleModule module = new SimpleModule("quantities");
    module.addSerializer(Quantity.class, new QuantityWriter());
    module.addSerializer(Double.class, new PlainNumberWriter());
    QuantityKind.ALL.forEach(kind -> addReader(module, kind));
    return module;
  }

  private static <T extends Quantity> void addReader(SimpleModule module, QuantityKind<T> kind) {
    module.addDeserializer(kind.type(), new QuantityReader<>(kind));
  }

  /** The unknown fields are put back one by one, each where it was. */
  @JsonIgnoreProperties("unknowns")
  private interface WithoutUnknowns {}

  private static final class PlainWords extends JacksonAnnotationIntrospector {
    private static final long serialVersionUID = 1L;

    @Override
    public String[] findEnumValues(
        com.fasterxml.jackson.databind.cfg.MapperConfig<?> config,
        AnnotatedClass type,
        Enum<?>[] constants,
        String[] names) {
      for (int i = 0; i < constants.length; i++) {
        names[i] = word(constants[i]);
      }
      return names;
    }
  }

  private static final class QuantityWriter extends JsonSerializer<Quantity> {
    @Override
    public void serialize(Quantity value, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      out.writeTree(AmountJson.write(value.typed()));
    }
  }

  private static final class PlainNumberWriter extends JsonSerializer<Double> {
    @Override
    public void serialize(Double value, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      out.writeNumber(AmountJson.exact(value));
    }
  }

  private static final class QuantityReader<T extends Quantity> extends JsonDeserializer<T> {
    private final QuantityKind<T> kind;

    QuantityReader(QuantityKind<T> kind) {
      this.kind = kind;
    }

    @Override
    public T deserialize(JsonParser in, DeserializationContext context) throws IOException {
      JsonNode node = context.readTree(in);
      return kind.make().apply(AmountJson.read(node, kind.dimension()));
    }
  }
}
