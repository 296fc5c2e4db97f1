package tankyard.engine.report.map;

import java.awt.BasicStroke;
import java.awt.Stroke;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;

/** Dash and width of a line by what it carries and whether it is new. */
final class LineLook {
  static final Stroke BERM = stroke(1.6f, 5, 3);
  private static final float THICK = 3f;
  private static final float THIN = 1.7f;
  private static final float[] SOLID = {};

  private LineLook() {}

  static Stroke of(Line line) {
    if (line.status() == Status.REMOVE) {
      return stroke(1.2f, 2, 3);
    }
    return stroke(line.status() == Status.NEW ? THICK : THIN, dash(line.service()));
  }

  /** As it stands in the legend. */
  static Stroke of(Service service) {
    return stroke(THICK, dash(service));
  }

  static Stroke casing(Line line) {
    float width = line.status() == Status.NEW ? THICK : THIN;
    return new BasicStroke(width + 2.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  }

  private static float[] dash(Service service) {
    return switch (service) {
      case FLOW_LINE, WATER_LEG -> SOLID;
      case OIL_LEG -> new float[] {11, 5};
      case OVERFLOW -> new float[] {2, 4.5f};
      case SUCTION -> new float[] {6, 4};
      case INJECTION -> new float[] {13, 4, 2, 4};
      case WATER_RETURN -> new float[] {4, 4};
    };
  }

  private static Stroke stroke(float width, float... dash) {
    return dash.length == 0
        ? new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
        : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
  }
}
