package tankyard.app.pressure;

import tankyard.engine.units.Figures;
import tankyard.engine.window.GasBreak;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Setting;
import tankyard.engine.window.Window;

/** What a window comes to, in one or two sentences. */
record Verdict(Rounded rounded) {

  String of(Window window) {
    return window.notValid().map(this::notValid).orElseGet(() -> plain(window));
  }

  private String notValid(GasBreak gas) {
    return "Not valid: "
        + Figures.decimals(100 * gas.gas().part().value().ratio(), 0)
        + " % of what comes in at "
        + psi(rounded.near(rounded.value(gas.gas().gauge())))
        + " is gas, and this is for a separator full of liquid. Take the gas off first; no setting is given.";
  }

  private String plain(Window window) {
    if (window.least().isEmpty() && window.most().isEmpty()) {
      return "Neither end is known yet.";
    }
    if (window.least().isEmpty()) {
      return "The least is not known: no water leg tells what must be reached.";
    }
    if (window.most().isEmpty()) {
      return "The most is not known: no well, vessel or pipe says what it stands.";
    }
    return window.recommended().map(r -> open(r, window)).orElseGet(() -> closed(window));
  }

  private String open(Setting recommended, Window window) {
    String advice =
        "Set the regulator to "
            + psi(rounded.near(rounded.value(recommended.regulator().value())))
            + "; the gauge then reads "
            + psi(rounded.near(rounded.value(recommended.gauge())))
            + ".";
    return window
        .setting()
        .filter(Setting::typed)
        .map(typed -> typed.fits() ? typedFits(typed) : typedDoesNot(typed) + " " + advice)
        .orElse(advice);
  }

  private String typedFits(Setting typed) {
    return "The setting of " + regulator(typed) + " lies in the window.";
  }

  private String typedDoesNot(Setting typed) {
    return "The setting of " + regulator(typed) + " does not lie in the window.";
  }

  private String regulator(Setting setting) {
    return psi(rounded.near(rounded.value(setting.regulator().value())));
  }

  private String closed(Window window) {
    PressureLimit lower = window.least().orElseThrow();
    PressureLimit upper = window.most().orElseThrow();
    if (upper.beyondAnyGauge()) {
      return "No setting works: " + upper.whyNoGauge(rounded.unit()) + ".";
    }
    double least = rounded.value(lower.gauge().value());
    double most = rounded.value(upper.gauge().value());
    if (least > most) {
      return "No setting works: at least "
          + psi(rounded.limit(lower))
          + " is needed and at most "
          + psi(rounded.limit(upper))
          + " is allowed, "
          + psi(rounded.near(least - most))
          + " short.";
    }
    return "No setting works: the window is "
        + psi(rounded.near(most - least))
        + " wide and the regulator builds up "
        + psi(rounded.near(rounded.value(window.buildUp())))
        + ".";
  }

  private String psi(String digits) {
    return rounded.withUnit(digits);
  }
}
