package tankyard.app.style;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.paint.Color;
import tankyard.engine.lease.Service;

/**
 * The colours of drawings in one shade. Services take the eight-colour set of Okabe and Ito ("Color
 * Universal Design", 2008), which people with any common colour blindness tell apart; here made
 * darker on light paper and lighter on dark, so that a thin line stands out (contrast 3 to 1 or
 * better). Every service has a dash of its own as well: colour never says anything alone.
 */
public record Inks(
    Color paper,
    Color ink,
    Color quiet,
    Color grid,
    Color lowGround,
    Color highGround,
    Color contour,
    Color contourWords,
    Color picked,
    Color least,
    Color most,
    Color accent,
    List<Color> services) {

  private static final Inks LIGHT =
      new Inks(
          Color.web("#fbfbf9"),
          Color.web("#1d252c"),
          Color.web("#5b6670"),
          Color.web("#1d252c", 0.09),
          Color.web("#f6f7f2"),
          Color.web("#e4dccb"),
          Color.web("#cdc3b0"),
          Color.web("#5f5640"),
          Color.web("#ffb000"),
          Color.web("#0072b2"),
          Color.web("#b34700"),
          Color.web("#0f6e78"),
          colours("#007a5a", "#b34700", "#0072b2", "#a0417c", "#1f6a95", "#3f444a", "#5a4fcf"));

  private static final Inks DARK =
      new Inks(
          Color.web("#171b20"),
          Color.web("#e8ecef"),
          Color.web("#9aa6b1"),
          Color.web("#e8ecef", 0.08),
          Color.web("#1b2025"),
          Color.web("#3a382f"),
          Color.web("#4d4a3f"),
          Color.web("#b3aa94"),
          Color.web("#ffb000"),
          Color.web("#56b4e9"),
          Color.web("#f08a4b"),
          Color.web("#4db6c1"),
          colours("#35c79c", "#f08a4b", "#56b4e9", "#e39bc6", "#9fd3f2", "#cfd4d9", "#b3a6ff"));

  public Inks {
    services = List.copyOf(services);
  }

  private static List<Color> colours(String... web) {
    return Stream.of(web).map(Color::web).toList();
  }

  public static Inks of(Shade shade) {
    return shade == Shade.DARK ? DARK : LIGHT;
  }

  public Color of(Service service) {
    return services.get(service.ordinal());
  }

  /** The dash of a service, in pixels on and off; empty for a full line. */
  public static double[] dash(Service service) {
    return switch (service) {
      case FLOW_LINE, WATER_LEG -> new double[0];
      case OIL_LEG -> new double[] {10, 4};
      case OVERFLOW -> new double[] {2, 4};
      case SUCTION -> new double[] {6, 3, 2, 3};
      case INJECTION -> new double[] {12, 3, 2, 3, 2, 3};
      case WATER_RETURN -> new double[] {4, 4};
    };
  }

  /** Water leg and flow line both run full; the water leg is the heavier. */
  public static double weight(Service service) {
    return service == Service.WATER_LEG ? 3 : 2;
  }
}
