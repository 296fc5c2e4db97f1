package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.lease.Tank;
import tankyard.engine.units.UnitSystem;

/**
 * The page that hangs at the battery: what everything is set to, how the valves stand, the order of
 * starting up, and what to do first when something looks wrong. Settings are rounded to the side
 * that keeps inside the limits.
 */
public final class SettingsReport {
  private SettingsReport() {}

  public static Report of(Results results, UnitSystem units) {
    Draft draft = new Draft(results, units);
    List<Section> sections = new ArrayList<>();
    sections.add(Section.of("Set to", new Block.Table("", SettingRows.COLUMNS, rows(draft))));
    sections.add(Section.of("Valves in normal running", new Block.Points(valves(results))));
    sections.add(Section.of("Starting up, in this order", new Block.Points(startUp(results))));
    sections.add(Section.of("If this, do that first", trouble(results)));
    sections.add(Section.of("Fill in by hand", new Block.Points(blanks())));
    return draft.finish(LeaseReport.STANDING, sections);
  }

  private static List<List<String>> rows(Draft draft) {
    return new SettingRows(draft).all();
  }

  private static List<String> valves(Results results) {
    List<String> points = new ArrayList<>();
    points.add("Hand valves on the water leg and the oil leg: open, and tagged so.");
    if (separates(results)) {
      points.add("Bypass round the dump valve, if there is one: shut.");
    }
    if (settles(results)) {
      points.add(
          "Gun barrel: nothing shut in its leg, its vents or its oil outlet, or locked open.");
    }
    points.add("Overflow between tanks: no valve in it, or locked open.");
    points.add("Relief valve: nothing shut ahead of it or behind it, its outlet led to a tank.");
    if (results.lease().berms().stream().anyMatch(b -> b.status().stays())) {
      points.add("Berm drain: shut and locked; open only after looking at the water.");
    }
    if (!results.lease().injectionPumps().isEmpty()) {
      points.add("Injection pump: suction and discharge open before it starts.");
    }
    if (separates(results)) {
      points.add("Sight glass or try-cocks at the interface and a foot above and below it: open.");
    }
    points.add(
        "Load lines, and every valve of an oil tank below its liquid: shut, and sealed where the"
            + " purchaser or the rule asks, the numbers in the book.");
    if (results.lease().tanks().stream().anyMatch(t -> t.duty() == Tank.Duty.WATER)) {
      points.add("Skim line of the water tank: drain the oil film before the pump can draw it.");
    }
    return points;
  }

  private static List<String> startUp(Results results) {
    List<String> points = new ArrayList<>();
    points.add("Walk the lines; every union and plug made up; nobody in a tank or a trench.");
    if (separates(results)) {
      points.add("Screw the regulator out, then fill the separator with water to the interface.");
      points.add("Work the float by hand: the dump valve opens and shuts without sticking.");
    }
    if (settles(results)) {
      points.add("Set the weir to the height above; see that leg and vessel are vented together.");
      points.add(
          "Fill the gun barrel with water until it runs over the weir: the first oil then floats, and"
              + " none goes down the leg.");
    }
    points.add(
        "Lift each high switch: the wells' contactors drop out and the injection pump runs on. Pull"
            + " its wire: the same. Every month again.");
    if (separates(results)) {
      points.add("Bring one well on; vent the gas until liquid stands at the oil outlet.");
      points.add(
          "Fill the water leg: work the float's lever by hand until water arrives at the tank. While"
              + " the leg is empty the float opens only at a lower gauge.");
      points.add("Screw the regulator in until the gauge reads the setting above.");
      points.add("Bring the other wells on one at a time; read the gauge and every stuffing box.");
    } else {
      points.add("Bring the wells on one at a time; read every stuffing box.");
    }
    points.add("See water arrive in the water tank and oil, not water, in the oil tank.");
    if (settles(results)) {
      points.add(
          "Gauge the interface once oil runs at its outlet: days, not hours. An inch of weir moves it"
              + " several: set the nipple a little, wait, gauge again.");
    }
    if (results.yard().power().stream().anyMatch(pole -> pole.motors().size() > 1)) {
      points.add(
          "Give each motor's timer a delay of its own, the largest motor last; cut the power once and"
              + " watch them come back one after the other.");
    }
    if (!results.lease().injectionPumps().isEmpty()) {
      points.add(
          "Fill the pump and its suction, then start it; read its gauge against the red line.");
    }
    points.add("Come back within the first night: levels, gauge, leaks at every joint.");
    return points;
  }

  private static boolean separates(Results results) {
    return results.lease().separators().stream().anyMatch(s -> s.status().stays());
  }

  private static boolean settles(Results results) {
    return results.lease().gunBarrels().stream().anyMatch(g -> g.status().stays());
  }

  private static Block trouble(Results results) {
    List<List<String>> rows = new ArrayList<>();
    if (separates(results)) {
      rows.addAll(ofSeparator());
    }
    if (settles(results)) {
      rows.addAll(ofGunBarrel());
    }
    rows.addAll(ofAll());
    return new Block.Table("", List.of(text("seen"), text("likely"), text("first")), rows);
  }

  private static List<List<String>> ofSeparator() {
    return List.of(
        List.of(
            "gauge below the least, water tank not filling",
            "regulator held open, a leg broken, the vessel drained to its interface",
            "stop the wells; look along both legs"),
        List.of(
            "gauge above the most and climbing",
            "regulator stuck or the oil leg frozen or shut",
            "stop the wells; open nothing under pressure by hand"),
        List.of(
            "oil tank fills fast and is mostly water",
            "dump valve plugged or its hand valve shut",
            "open the valve or the bypass; count on all the fluid coming over"),
        List.of(
            "oil in the water tank",
            "dump valve held open, float too light or sunk",
            "shut the water leg by hand; stop the injection pump before oil reaches it"));
  }

  private static List<List<String>> ofGunBarrel() {
    return List.of(
        List.of(
            "oil tank fills fast and is mostly water, gun barrel full to its oil outlet",
            "leg or downcomer plugged, too small for the surge, or the water tank too high",
            "stop some of the wells; look down the leg; gauge the water tank"),
        List.of(
            "oil in the water tank, gun barrel",
            "interface down to the leg: weir too low, fresher water, or the leg pulls for want of a"
                + " vent",
            "open the vent; raise the nipple; stop the injection pump before oil reaches it"));
  }

  private static List<List<String>> ofAll() {
    return List.of(
        List.of(
            "water tank high, pump not running",
            "pump tripped, belt, suction, well shut",
            "stop the wells; start the pump only after its cause is found"),
        List.of(
            "pump gauge at the red line",
            "well taking less, valve shut, line plugged",
            "stop the pump: the permit holds at the wellhead"),
        List.of(
            "wet ground",
            "line, tank or separator leaks",
            "stop the wells; shut both ends; report as the rules ask"));
  }

  private static List<String> blanks() {
    return List.of(
        "Pumper and telephone: ..............................................................",
        "Who to call for a spill, federal, state and landowner: .............................",
        "Injection permit, its pressure and its rate: .......................................",
        "H2S on this lease, measured on: ....................................................",
        "These settings were put in on, by: .................................................");
  }
}
