package tankyard.engine.leasefile;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.lease.Unknowns;

/**
 * The fields a record of the document has in the file. Read off the record itself, so that a field
 * added there is known here at once.
 */
record RecordShape(Map<String, Field> fields) {
  private static final ClassValue<RecordShape> SHAPES =
      new ClassValue<>() {
        @Override
        protected RecordShape computeValue(Class<?> type) {
          return read(type);
        }
      };

  /**
   * One field.
   *
   * @param type of its value, or of the items of its list
   */
  record Field(String name, Class<?> type, boolean list, boolean optional) {
    /** Whether it holds an object of the document, which has fields of its own. */
    boolean isRecord() {
      return type.isRecord() && QuantityKind.of(type).isEmpty();
    }
  }

  static RecordShape of(Class<?> record) {
    return SHAPES.get(record);
  }

  private static RecordShape read(Class<?> record) {
    Map<String, Field> fields = new LinkedHashMap<>();
    for (RecordComponent component : record.getRecordComponents()) {
      if (component.getType() != Unknowns.class) {
        fields.put(component.getName(), field(component));
      }
    }
    return new RecordShape(fields);
  }

  private static Field field(RecordComponent component) {
    boolean list = component.getType() == List.class;
    boolean optional = component.getType() == Optional.class;
    Type type = component.getGenericType();
    if (list || optional) {
      type = ((ParameterizedType) type).getActualTypeArguments()[0];
    }
    return new Field(component.getName(), (Class<?>) type, list, optional);
  }
}
