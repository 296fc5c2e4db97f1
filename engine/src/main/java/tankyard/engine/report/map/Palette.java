package tankyard.engine.report.map;

import java.awt.Color;
import tankyard.engine.lease.Service;

/** Colours of a map, dark on light or light on dark. */
record Palette(
    Color paper,
    Color map,
    Color ink,
    Color faint,
    Color low,
    Color high,
    Color contour,
    Color oilLeg,
    Color waterLeg) {
  private static final Color VERMILION = new Color(0xD55E00);
  private static final Color BLUE = new Color(0x0072B2);
  private static final Color SKY_BLUE = new Color(0x56B4E9);
  private static final Color GREEN = new Color(0x009E73);
  private static final Color PURPLE = new Color(0xCC79A7);
  private static final Color ORANGE = new Color(0xE69F00);

  static final Palette LIGHT =
      new Palette(
          Color.WHITE,
          new Color(0xFBFAF6),
          new Color(0x1B1F24),
          new Color(0x6A7178),
          new Color(0xEFF2E6),
          new Color(0xE0D2B4),
          new Color(0xA58F6B),
          new Color(0x1B1F24),
          BLUE);

  static final Palette DARK =
      new Palette(
          new Color(0x14181D),
          new Color(0x191E24),
          new Color(0xECEFF2),
          new Color(0x9AA4AE),
          new Color(0x1E262B),
          new Color(0x4A463B),
          new Color(0xA99D84),
          new Color(0xECEFF2),
          SKY_BLUE);

  Color line(Service service) {
    return switch (service) {
      case FLOW_LINE -> VERMILION;
      case OIL_LEG -> oilLeg;
      case WATER_LEG, WATER_RETURN -> waterLeg;
      case OVERFLOW -> PURPLE;
      case SUCTION -> ORANGE;
      case INJECTION -> GREEN;
    };
  }

  /** The ground's tint, from the lowest at 0 to the highest at 1. */
  Color ground(double share) {
    return mix(low, high, share);
  }

  Color water() {
    return waterLeg;
  }

  /** The map's ground behind a label, nearly opaque. */
  Color veil() {
    return new Color(map.getRed(), map.getGreen(), map.getBlue(), 170);
  }

  private static Color mix(Color a, Color b, double share) {
    return new Color(
        part(a.getRed(), b.getRed(), share),
        part(a.getGreen(), b.getGreen(), share),
        part(a.getBlue(), b.getBlue(), share));
  }

  private static int part(int a, int b, double share) {
    return (int) Math.round(a + share * (b - a));
  }
}
