package tankyard.engine.designs;

import tankyard.engine.checks.Looked;
import tankyard.engine.lease.Service;
import tankyard.engine.study.GunBarrelFall;
import tankyard.engine.study.GunBarrelResult;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.verification.Answers;
import tankyard.engine.verification.CheckedRows;

/** A lease with a gun barrel, worked by hand. */
class GunBarrelDesignCheckedTest implements CheckedRows {
  private static final String P4 = "p4-old-windmill";
  private static final String OTHER_WATER = "/gunBarrels/0/otherWater";
  private static final Looked BASE = Looked.at(P4);

  /** Three inches, which the hand takes as lost in the leg. */
  private static final double THREE_INCHES = Length.ofInches(3).toFeet();

  @Override
  public String topic() {
    return "gun-barrels";
  }

  @Override
  public void compute(Answers answers) {
    weir(answers);
    drifts(answers);
    surge(answers);
    holds(answers);
  }

  private static GunBarrelResult barrel(Looked looked, String caseId) {
    return looked.caseOf(caseId).gunBarrels().get(0);
  }

  private static void weir(Answers answers) {
    GunBarrelResult barrel = barrel(BASE, "today");
    answers.put("P4", "weir", barrel.cut().weir().value().toFeet());
    answers.put("P4", "inch", barrel.cut().interfaceForAnInch().value().toInches());
    answers.put("P4", "bottom", barrel.atBottom().value().toPsi());
    answers.put("P4", "overhead", barrel.onWells().value().toPsi());
  }

  private static void drifts(Answers answers) {
    answers.put("P4", "water-1.03", interfaceWith(OTHER_WATER, 1.03, "SG"));
    answers.put("P4", "water-1.10", interfaceWith(OTHER_WATER, 1.10, "SG"));
    answers.put("P4", "oil-28", interfaceWith("/gunBarrels/0/otherOil", 28, "°API"));
    answers.put("P4", "oil-36", interfaceWith("/gunBarrels/0/otherOil", 36, "°API"));
    answers.put("P4", "weir-1.03", last(BASE).weir().value().toFeet());
  }

  private static double interfaceWith(String place, double gravity, String unit) {
    return last(BASE.with(OTHER_WATER, null).with(place, gravity, unit))
        .interfaceHeight()
        .value()
        .toFeet();
  }

  /** What was typed comes after the four gravities that are off by 0.03. */
  private static tankyard.engine.study.GunBarrelCut.Drift last(Looked looked) {
    var drifts = barrel(looked, "today").cut().drifts();
    return drifts.get(drifts.size() - 1);
  }

  private static void surge(Answers answers) {
    Looked cool = BASE.with("/site/groundSummer", 60, "°F");
    Looked yard = cool.with("/gunBarrels/0/legLength", 1, "ft");
    double perFoot = barrel(yard, "all-on").leg().orElseThrow().loss().value().toFeet();
    Looked losing = cool.with("/gunBarrels/0/legLength", THREE_INCHES / perFoot, "ft");
    answers.put(
        "P4",
        "three-inches",
        barrel(losing, "all-on").leg().orElseThrow().interfaceHeight().value().toFeet());
    GunBarrelFall fall = water(BASE);
    answers.put("P4", "to-spend", fall.spare().value().toFeet() + fall.loss().value().toFeet());
    for (String size : new String[] {"2", "3", "4"}) {
      Looked sized = BASE.with("/lines/6/pipe", "steel-" + size);
      answers.put("P4", "line-" + size, water(sized).loss().value().toFeet());
    }
    for (String size : new String[] {"3", "4", "6"}) {
      Looked sized = BASE.with("/gunBarrels/0/downcomerPipe", "steel-" + size);
      answers.put(
          "P4",
          "downcomer-" + size,
          barrel(sized, "all-on").leg().orElseThrow().downcomer().value().toBarrelsPerDay());
    }
    answers.put("P4", "surge", barrel(BASE, "all-on").surge().value().toBarrelsPerDay());
    double rate = water(BASE).rate().in(Unit.GALLON_PER_MINUTE);
    answers.put("P4", "surge-gpm", rate);
  }

  private static GunBarrelFall water(Looked looked) {
    return barrel(looked, "all-on").falls().stream()
        .filter(f -> f.service() == Service.WATER_LEG)
        .findFirst()
        .orElseThrow();
  }

  private static void holds(Answers answers) {
    GunBarrelResult barrel = barrel(BASE, "today");
    answers.put("P4", "water-stays", barrel.waterStays().orElseThrow().value().toHours());
    answers.put("P4", "oil-stays", barrel.oilStays().orElseThrow().value().toDays());
  }
}
