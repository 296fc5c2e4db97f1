package tankyard.engine.checks.vessels;

import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.window.FloatWork;
import tankyard.engine.window.Setting;
import tankyard.engine.window.Window;
import tankyard.engine.working.Source;

/** When a flood makes the water fresher, the float no longer opens at the setting. */
public final class FloatFresherCheck implements Check {
  private static final Source SOURCE =
      Source.definition("buoyancy in the fresher water, the leg full of today's");

  @Override
  public String id() {
    return "float-weak-when-fresher";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.windows().stream().flatMap(window -> finding(window).stream()).toList();
  }

  private Optional<Finding> finding(Window window) {
    Optional<Setting> setting = window.advised();
    Optional<FloatWork> work = window.floatWork().filter(w -> worksToday(w, setting));
    return work.flatMap(FloatWork::fresher)
        .filter(fresher -> failsThen(fresher, setting))
        .map(fresher -> finding(window, fresher));
  }

  /** A float too weak in today's water is told by the window. */
  private static boolean worksToday(FloatWork work, Optional<Setting> setting) {
    return work.opens().value().newtons() > 0
        && work.closes().value().newtons() > 0
        && setting.filter(s -> s.gauge().toPsi() > work.legFull().value().toPsi()).isEmpty();
  }

  private static boolean failsThen(FloatWork.Fresher fresher, Optional<Setting> setting) {
    boolean sinks = fresher.opens().value().newtons() <= 0;
    return sinks
        || setting.filter(s -> s.gauge().toPsi() > fresher.legFull().value().toPsi()).isPresent();
  }

  private Finding finding(Window window, FloatWork.Fresher fresher) {
    boolean sinks = fresher.opens().value().newtons() <= 0;
    String water = Figures.decimals(fresher.water().specific(), 3);
    String pounds =
        Figures.decimals(Rounding.NEAREST.round(fresher.halfway().value().toPounds(), 1), 1);
    return Finding.of(
            id(),
            Severity.LOOK,
            window.separatorId(),
            "In water as fresh as "
                + water
                + " SG "
                + window.separatorName()
                + "'s float "
                + (sinks
                    ? "no longer rises, and the dump valve stays shut."
                    : "opens only up to "
                        + Versus.print(fresher.legFull().value(), Unit.PSI, 1)
                        + " on the gauge; it is to read "
                        + Versus.print(window.advised().orElseThrow().gauge(), Unit.PSI, 1)
                        + "."),
            SOURCE)
        .mendedBy(
            "Weigh the ball to " + pounds + " lb when the water freshens, halfway again.",
            "A smaller port, a longer lever, a double-seated or pilot-worked valve.")
        .shownBy(fresher.legFull().working());
  }
}
