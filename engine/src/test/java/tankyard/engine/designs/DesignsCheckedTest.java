package tankyard.engine.designs;

import tankyard.engine.outlook.RunOut;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.InjectionResult;
import tankyard.engine.study.LineResult;
import tankyard.engine.study.LineTemperatures;
import tankyard.engine.study.StorageResult;
import tankyard.engine.study.SuctionResult;
import tankyard.engine.study.WellResult;
import tankyard.engine.verification.Answers;
import tankyard.engine.verification.CheckedRows;
import tankyard.engine.window.PressureLimit;

/** Four leases worked by hand. */
class DesignsCheckedTest implements CheckedRows {
  @Override
  public String topic() {
    return "designs";
  }

  @Override
  public void compute(Answers answers) {
    osageBend(answers);
    sandstoneKnob(answers);
    coyoteCreek(answers);
    blackWax(answers);
    prairieFlood(answers);
  }

  private static void osageBend(Answers answers) {
    Design p1 = Design.of("p1-osage-bend");
    PressureLimit least = p1.least();
    answers.put("P1", "static", least.lift().toPsi());
    answers.put("P1", "friction", least.friction().toPsi());
    answers.put("P1", "valve", least.valve().toPsi());
    answers.put("P1", "least", p1.leastPsi());
    answers.put("P1", "most", p1.mostPsi());
    answers.put("P1", "setting", p1.window.setting().orElseThrow().regulator().value().toPsi());
    answers.put("P1", "oil-leg", p1.window.oilLeg().orElseThrow().need().value().toPsi());
    CaseResult at9 = p1.at(9);
    for (WellResult well : at9.wells()) {
      answers.put("P1", well.wellId() + "-lift", well.lift().toPsi());
      answers.put("P1", well.wellId() + "-friction", well.friction().toPsi());
      answers.put("P1", well.wellId() + "-box", well.box().value().toPsi());
    }
    for (String size : new String[] {"1.5", "1.25"}) {
      for (WellResult well : p1.withEach("/lines", "pipe", "poly-" + size).at(9).wells()) {
        answers.put("P1", well.wellId() + "-friction-" + size, well.friction().toPsi());
      }
    }
    double w3 =
        p1.window.allowed().stream()
            .filter(l -> l.thingId().equals("W3"))
            .findFirst()
            .orElseThrow()
            .gauge()
            .value()
            .toPsi();
    answers.put("P1", "W3-most", w3);
    StorageResult storage = at9.storage();
    answers.put("P1", "usable", storage.oilUsable().orElseThrow().value().toBarrels());
    answers.put("P1", "haul", storage.haulInterval().orElseThrow().value().toDays());
    answers.put("P1", "slack", storage.roadOut().orElseThrow().value().toDays());
  }

  private static void sandstoneKnob(Answers answers) {
    way("straight-2", Design.of("p2-sandstone-knob-2in"), answers);
    way("straight-3", Design.of("p2-sandstone-knob"), answers);
    way("deeper-3", Design.of("p2-sandstone-knob-deeper"), answers);
    way("round-2", Design.of("p2-sandstone-knob-round-2in"), answers);
    way("round-3", Design.of("p2-sandstone-knob-round-3in"), answers);
    Design straight = Design.of("p2-sandstone-knob");
    answers.put("P2", "box-at-16", straight.at(16).wells().get(0).box().value().toPsi());
    answers.put("P2", "box-lift", straight.at(16).wells().get(0).lift().toPsi());
  }

  private static void way(String way, Design design, Answers answers) {
    answers.put("P2", way + "-static", design.least().lift().toPsi());
    answers.put("P2", way + "-friction", design.least().friction().toPsi());
    answers.put("P2", way + "-valve", design.least().valve().toPsi());
    answers.put("P2", way + "-crest", design.leastPsi());
    answers.put(
        "P2", way + "-tank", design.window.tankAlone().orElseThrow().gauge().value().toPsi());
  }

  private static void coyoteCreek(Answers answers) {
    StorageResult with210 = Design.of("p3-coyote-creek-210-oil").today().storage();
    answers.put("P3", "210-oil-usable", with210.oilUsable().orElseThrow().value().toBarrels());
    answers.put("P3", "210-oil-days", with210.roadOut().orElseThrow().value().toDays());
    answers.put("P3", "needed", with210.oilNeeded().orElseThrow().value().toBarrels());
    Design base = Design.of("p3-coyote-creek");
    StorageResult two300s = base.today().storage();
    answers.put("P3", "two-300-usable", two300s.oilUsable().orElseThrow().value().toBarrels());
    answers.put("P3", "two-300-days", two300s.roadOut().orElseThrow().value().toDays());
    answers.put("P3", "210-room", two300s.waterRoom().orElseThrow().value().toBarrels());
    answers.put("P3", "210-hours", hours(two300s));
    StorageResult water300 = Design.of("p3-coyote-creek-210-oil").today().storage();
    answers.put("P3", "300-room", water300.waterRoom().orElseThrow().value().toBarrels());
    answers.put("P3", "300-hours", hours(water300));
    Design with400 = Design.of("p3-coyote-creek-400");
    Design two210s = Design.of("p3-coyote-creek-two-210s");
    answers.put("P3", "400-hours", hours(with400.today().storage()));
    answers.put("P3", "two-210-hours", hours(two210s.today().storage()));
    answers.put("P3", "berm-400", with400.bermFeet());
    answers.put("P3", "berm-two-210", two210s.bermFeet());
    answers.put("P3", "all-fluid", two300s.allFluid().toBarrelsPerDay());
    answers.put("P3", "all-on", base.caseOf("all-on").storage().allFluid().toBarrelsPerDay());
    answers.put(
        "P3", "overflow-2", base.today().overflows().get(0).capacity().value().toBarrelsPerDay());
    Design wider = base.withEach("/lines", "pipe", "steel-3");
    answers.put(
        "P3", "overflow-3", wider.today().overflows().get(0).capacity().value().toBarrelsPerDay());
  }

  private static void blackWax(Answers answers) {
    for (String size : new String[] {"2", "3", "4"}) {
      Design warm = Design.of("p6-black-wax" + (size.equals("2") ? "" : "-" + size + "in"));
      Design design = warm.withoutEach("/wells", "headTemperature");
      for (String at : new String[] {"july", "july-met", "january", "january-met"}) {
        answers.put("P6", size + "-" + at, loss(design, at, "TR"));
      }
      answers.put("P6", size + "-restart", gel(design, "TR"));
    }
    Design three = Design.of("p6-black-wax-three-lines").withoutEach("/wells", "headTemperature");
    answers.put("P6", "three-pulse", loss(three, "january", "FL-W2"));
    answers.put(
        "P6", "three-average", loss(three.withEach("/wells", "surge", 1), "january", "FL-W2"));
    answers.put("P6", "three-restart", gel(three, "FL-W2"));
    Design base = Design.of("p6-black-wax");
    LineTemperatures trunk = base.caseOf("january").line("TR").orElseThrow().temperatures();
    answers.put("P6", "cooling", trunk.coolingLength().orElseThrow().value().toFeet());
    answers.put("P6", "wells-at-85", loss(base, "january", "TR"));
    answers.put("P6", "water-back", loss(Design.of("p6-black-wax-water-return"), "july-met", "TR"));
  }

  private static double loss(Design design, String designCase, String line) {
    return design.caseOf(designCase).line(line).orElseThrow().friction().value().toPsi();
  }

  private static double gel(Design design, String line) {
    LineResult result = design.caseOf("january").line(line).orElseThrow();
    return result.restart().orElseThrow().gel().value().toPsi();
  }

  private static void prairieFlood(Answers answers) {
    Design p5 = Design.of("p5-prairie-flood");
    for (int rate : new int[] {600, 780, 1000}) {
      Design at = p5.with("/injectionPumps/0/rate", Design.amount(rate, "bbl/d"));
      InjectionResult now = at.today().injections().get(0);
      InjectionResult later = at.caseOf("in-24-months").injections().get(0);
      answers.put("P5", rate + "-wellhead", now.wellhead().value().toPsi());
      answers.put("P5", rate + "-hours", now.hours().value().toHours());
      answers.put("P5", rate + "-hours-24", later.hours().value().toHours());
      answers.put("P5", rate + "-power", now.power().value().toHorsepower());
      answers.put("P5", rate + "-friction", now.lineLoss().toPsi());
    }
    InjectionResult today = p5.today().injections().get(0);
    answers.put("P5", "limit", today.limit().orElseThrow().value().toPsi());
    answers.put("P5", "long", p5.month(RunOut.Kind.PUMP_LONG_HOURS));
    answers.put("P5", "full", p5.month(RunOut.Kind.PUMP_FULL_TIME));
    answers.put("P5", "well", p5.month(RunOut.Kind.WELL_PRESSURE));
    for (int water : new int[] {420, 600, 840}) {
      Design at = p5.with("/cases/0/water", water / 420.0);
      answers.put("P5", "hours-" + water, hours(at.today().storage()));
    }
    StorageResult storage = p5.today().storage();
    answers.put("P5", "band", storage.band().orElseThrow().value().toBarrels());
    answers.put("P5", "runs", storage.pumpRuns().orElseThrow().value().toHours());
    answers.put("P5", "rests", storage.pumpRests().orElseThrow().value().toHours());
    SuctionResult suction = p5.today().suctions().get(0);
    answers.put("P5", "acceleration", suction.acceleration().value().toFeet());
    answers.put("P5", "suction", suction.available().value().toFeet());
    Design two = Design.of("p5-prairie-flood-two-wells");
    for (int rate : new int[] {840, 1000}) {
      Design at = two.with("/injectionPumps/0/rate", Design.amount(rate, "bbl/d"));
      answers.put("P5", "two-" + rate, at.today().injections().get(1).wellhead().value().toPsi());
    }
  }

  private static double hours(StorageResult storage) {
    return storage.waterHours().orElseThrow().value().toHours();
  }
}
