package tankyard.engine.takeoff;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tankyard.engine.catalog.Sundry.Nature;

/** The kinds of takeoff line. A quote in a lease may cover a whole kind by its {@link #id()}. */
public enum TakeoffKind {
  FLOW_LINE_PIPE("flow line pipe", Nature.GOODS),
  LEG_PIPE("pipe of oil and water legs", Nature.GOODS),
  OVERFLOW_PIPE("overflow pipe", Nature.GOODS),
  SUCTION_PIPE("suction pipe", Nature.GOODS),
  INJECTION_PIPE("injection line pipe", Nature.GOODS),
  RETURN_PIPE("water return pipe", Nature.GOODS),
  TRENCH("trench, bedding and marking", Nature.WORK),
  FITTINGS("fittings and supports", Nature.GOODS),
  VALVES("hand and check valves", Nature.GOODS),
  OVERFLOW_FITTINGS("overflow fittings", Nature.GOODS),
  SEPARATOR("separator", Nature.GOODS),
  GUN_BARREL("gun barrel", Nature.GOODS),
  OIL_TANK("oil tank", Nature.GOODS),
  WATER_TANK("water tank", Nature.GOODS),
  DUMP_VALVE("dump valve and float", Nature.GOODS),
  REGULATOR("back-pressure regulator", Nature.GOODS),
  RELIEF_VALVE("relief valve", Nature.GOODS),
  GAUGE("gauges", Nature.GOODS),
  INJECTION_PUMP("injection pump", Nature.GOODS),
  POWER("power and starters", Nature.WORK),
  PAD_AND_BERM("pad and berm", Nature.WORK),
  SIGN("signs", Nature.GOODS),
  CREW("crew and winch truck", Nature.WORK),
  OTHER("other", Nature.GOODS);

  private final String id = name().toLowerCase(Locale.ROOT).replace('_', '-');
  private final String words;
  private final Nature nature;

  TakeoffKind(String words, Nature nature) {
    this.words = words;
    this.nature = nature;
  }

  /** As written in a quote's {@code covers}: {@code flow-line-pipe}. */
  public String id() {
    return id;
  }

  public String words() {
    return words;
  }

  /** Whether a quote for the whole kind buys things or somebody's time. */
  public Nature nature() {
    return nature;
  }

  public static Optional<TakeoffKind> find(String id) {
    return Arrays.stream(values()).filter(k -> k.id().equals(id)).findFirst();
  }

  public static List<String> ids() {
    return Arrays.stream(values()).map(TakeoffKind::id).toList();
  }
}
