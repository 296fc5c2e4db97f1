package tankyard.engine.checks.vessels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Setting;
import tankyard.engine.window.Window;
import tankyard.engine.working.Source;

/** The heights are not known well enough to trust the setting at one end of the window. */
public final class HeightsDecideCheck implements Check {
  private static final Source SOURCE =
      Source.definition("accuracy of the heights, as typed, times the weight of the liquid");

  @Override
  public String id() {
    return "heights-decide";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    List<Finding> found = new ArrayList<>();
    Optional<Length> accuracy = evidence.lease().site().heightAccuracy();
    for (Window window : evidence.windows()) {
      accuracy
          .flatMap(a -> tightest(window).map(end -> finding(window, end, a)))
          .ifPresent(found::add);
    }
    return found;
  }

  /** One end of the window: how far the gauge stays off it, and how far it may be off itself. */
  private record End(PressureLimit limit, String words, double slackPsi, double bandPsi) {
    double share() {
      return Math.abs(slackPsi) / bandPsi;
    }
  }

  /** The end whose slack is the smallest part of its band; empty where both have slack enough. */
  private static Optional<End> tightest(Window window) {
    List<End> ends = new ArrayList<>();
    Optional<Setting> setting = window.setting();
    window.least().ifPresent(least -> end(least, "least", low(least, setting, window), ends));
    window.most().ifPresent(most -> end(most, "most", high(most, setting, window), ends));
    return ends.stream()
        .filter(end -> Math.abs(end.slackPsi()) < end.bandPsi())
        .min(Comparator.comparingDouble(End::share));
  }

  private static void end(PressureLimit limit, String words, double slackPsi, List<End> ends) {
    limit
        .heightBand()
        .filter(band -> band.toPsi() > 0)
        .ifPresent(band -> ends.add(new End(limit, words, slackPsi, band.toPsi())));
  }

  private static double low(PressureLimit least, Optional<Setting> setting, Window window) {
    return setting
        .map(s -> s.gauge().toPsi() - least.gauge().value().toPsi())
        .orElseGet(() -> room(window));
  }

  private static double high(PressureLimit most, Optional<Setting> setting, Window window) {
    return setting
        .map(s -> most.gauge().value().toPsi() - s.gaugeAtFlow().toPsi())
        .orElseGet(() -> room(window));
  }

  /** Without a setting each end is as far off as the window lacks. */
  private static double room(Window window) {
    double least = window.least().map(l -> l.gauge().value().toPsi()).orElse(0.0);
    double most = window.most().map(l -> l.gauge().value().toPsi()).orElse(Double.MAX_VALUE);
    return most - least - window.buildUp().toPsi();
  }

  private Finding finding(Window window, End end, Length accuracy) {
    Versus psi = Versus.of(Math.abs(end.slackPsi()), end.bandPsi(), Unit.PSI, 1);
    String limit = LimitName.of(end.limit());
    String words =
        window.setting().isPresent()
            ? window.separatorName() + " stands " + psi.value() + " off the " + end.words()
            : "The window of " + window.separatorName() + " is " + psi.value() + " short";
    return Finding.of(
            id(),
            Severity.LOOK,
            window.separatorId(),
            words
                + " ("
                + end.limit().name()
                + "); heights good to "
                + Versus.print(accuracy, Unit.FOOT, 1)
                + " may shift that by "
                + psi.limit()
                + ".",
            SOURCE)
        .inCase(end.limit().caseId())
        .mendedBy(
            "Level the height between "
                + window.separatorName()
                + " and "
                + limit
                + ": no other measurement shrinks it more, "
                + Versus.print(end.bandPsi() / accuracy.toFeet(), Unit.PSI, 2)
                + " for every foot.")
        .shownBy(end.limit().gauge().working());
  }
}
