package tankyard.engine.leasefile;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.PathType;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** The published JSON Schema of the lease file (draft 2020-12), and a document held against it. */
final class LeaseSchema {
  static final String RESOURCE = "lease-2.schema.json";

  private static final JsonSchema SCHEMA = load();

  private LeaseSchema() {}

  static List<Complaint> complaints(JsonNode tree) {
    return SCHEMA.validate(tree).stream().map(SchemaWords::complaint).distinct().toList();
  }

  /** The schema itself. */
  static JsonNode root() {
    return SCHEMA.getSchemaNode();
  }

  private static JsonSchema load() {
    SchemaValidatorsConfig config =
        SchemaValidatorsConfig.builder().pathType(PathType.JSON_POINTER).build();
    try (InputStream in = LeaseSchema.class.getResourceAsStream(RESOURCE)) {
      return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
          .getSchema(LeaseMapper.mapper().readTree(in), config);
    } catch (IOException e) {
      throw new UncheckedIOException(RESOURCE + " must be on the class path", e);
    }
  }
}
