package tankyard.engine.vessels;

import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Viscosity;
import tankyard.engine.verification.Answers;
import tankyard.engine.verification.CheckedRows;

/** Vessel volumes, settling and gun barrels against published examples and hand sums. */
class VesselsCheckedTest implements CheckedRows {
  private static final double IN = 0.0254;
  private static final double GALLON = 0.003785411784;

  @Override
  public String topic() {
    return "vessels";
  }

  @Override
  public void compute(Answers answers) {
    lying(answers, "TANK-01", new ConicalHead(54 * IN, 42 * IN));
    lying(answers, "TANK-03", new EllipsoidalHead(54 * IN, 42 * IN));
    lying(answers, "TANK-04", TorisphericalHead.flangedAndDished(54 * IN));
    answers.put("TANK-04", "1", gallons(vessel(TorisphericalHead.flangedAndDished(54 * IN)), 1));
    standing(answers, "conical", new ConicalHead(66 * IN, 33 * IN), 24, 60);
    standing(answers, "ellipsoidal", new EllipsoidalHead(66 * IN, 33 * IN), 24, 60);
    standing(answers, "dished", TorisphericalHead.flangedAndDished(66 * IN), 22, 60);
    settling(answers);
    verticalSeparator(answers);
    gunBarrel(answers);
  }

  private static LyingVessel vessel(Head head) {
    return new LyingVessel(54 * IN, 156 * IN, head);
  }

  private static double gallons(Vessel vessel, double inches) {
    return vessel.belowM3(inches * IN) / GALLON;
  }

  private static void lying(Answers answers, String example, Head head) {
    answers.put(example, "36", gallons(vessel(head), 36));
    answers.put(example, "84", gallons(vessel(head), 84));
    answers.put(example, "full", vessel(head).fullM3() / GALLON);
  }

  private static void standing(Answers answers, String name, Head head, int low, int high) {
    StandingVessel vessel = new StandingVessel(66 * IN, 200 * IN, head);
    answers.put("TANK-05", name + "-" + low, gallons(vessel, low));
    answers.put("TANK-05", name + "-" + high, gallons(vessel, high));
  }

  private static void settling(Answers answers) {
    answers.put("SETL-01", "v", Settling.stokes(20e-6, 900, 1.137, 1.9e-5));
    answers.put("SEP-02", "v", -100 * Settling.stokes(150e-6, 850, 998.9, 0.001129));
  }

  /** The diameter at which the layer's upward (or downward) flow just holds the drop still. */
  private static double diameterInches(
      double barrelsADay, double drop, double difference, double viscosity) {
    double speed = Settling.stokes(drop, difference * 999.016, 0, viscosity);
    double flow = LiquidRate.ofBarrelsPerDay(barrelsADay).cubicMetresPerSecond();
    return Math.sqrt(4 * flow / (Math.PI * speed)) / IN;
  }

  /** In a standing vessel a layer's depth over the time it stays is its rate over the floor. */
  private static double smallestMicrons(
      double barrelsADay, double inches, Gravity layer, double centipoise) {
    double floor = Math.PI / 4 * inches * IN * inches * IN;
    double rise = LiquidRate.ofBarrelsPerDay(barrelsADay).cubicMetresPerSecond() / floor;
    Length depth = Length.of(1000 * rise, Unit.METRE);
    return 1e6
        * Settling.smallest(
                depth,
                Time.of(1000, Unit.SECOND),
                sg(1.07),
                sg(141.5 / 161.5),
                new Settling.Around(layer, Viscosity.of(centipoise, Unit.CENTIPOISE)))
            .value()
            .metres();
  }

  private static void verticalSeparator(Answers answers) {
    double difference = 1.07 - 141.5 / 161.5;
    Gravity oil = sg(141.5 / 161.5);
    Gravity brine = sg(1.07);
    answers.put("SEP-01", "water", diameterInches(5000, 500e-6, difference, 0.010));
    answers.put("SEP-01", "oil", diameterInches(3000, 200e-6, difference, 0.001));
    answers.put("SEP-01", "water-drop", smallestMicrons(5000, 83.0, oil, 10));
    answers.put("SEP-01", "oil-drop", smallestMicrons(3000, 50.8, brine, 1));
    for (int inches : new int[] {84, 90, 96, 102}) {
      StandingVessel shell = new StandingVessel(inches / 2.0 * IN, 20, new FlatHead());
      double volume = 10 * 60 * LiquidRate.ofBarrelsPerDay(8000).cubicMetresPerSecond();
      answers.put("SEP-01", "h" + inches, shell.heightForM(volume) / IN);
    }
  }

  private static GunBarrelLeg barrel(double brine, double lossFeet) {
    return new GunBarrelLeg(Length.ofFeet(18), sg(0.8654), sg(brine), Length.ofFeet(lossFeet));
  }

  private static void gunBarrel(Answers answers) {
    Length weir = barrel(1.08, 0).weirFor(Length.ofFeet(10)).value();
    answers.put("GUNB-01", "weir", weir.toFeet());
    answers.put("GUNB-01", "touchy", barrel(1.08, 0).touchiness());
    answers.put("GUNB-01", "fresh", barrel(1.03, 0).interfaceFor(weir).value().toFeet());
    answers.put("GUNB-01", "loss", barrel(1.08, 0.25).interfaceFor(weir).value().toFeet());
  }

  private static Gravity sg(double value) {
    return Gravity.of(value, Unit.SPECIFIC_GRAVITY);
  }
}
