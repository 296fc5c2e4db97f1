package tankyard.engine.fluids;

import java.util.List;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Viscosity;
import tankyard.engine.verification.Answers;
import tankyard.engine.verification.CheckedRows;

/** Oil, water and brine against published values. */
class FluidsCheckedTest implements CheckedRows {
  @Override
  public String topic() {
    return "fluids";
  }

  @Override
  public void compute(Answers answers) {
    FluidModel model = model(Gravity.ofApi(30), 1.07);
    double oil = model.oil(fahrenheit(60)).gravity().value().specific();
    double brine = model.brine(fahrenheit(60)).gravity().value().specific();
    answers.put("PVT-01", "sg", oil);
    answers.put("PVT-01", "difference", brine - oil);
    brine(answers);
    water(answers);
    oils(answers);
    liveOil(answers);
  }

  private static void brine(Answers answers) {
    LiquidState hot = model(Gravity.ofApi(30), mccain(15)).brine(fahrenheit(200));
    answers.put("BRINE-02", "density", hot.liquid().densityKgPerM3());
    answers.put("BRINE-02", "viscosity", hot.viscosity().value().toCentipoise());
    McCainBrine published = new McCainBrine(200, 14.696, 15);
    answers.put("PVT-05", "fvf", published.formationVolumeFactor());
    answers.put("PVT-05", "density", published.densityKgPerM3());
    answers.put("PVT-05", "viscosity", published.viscosityCp());
    LiquidState warm = model(Gravity.ofApi(30), mccain(10)).brine(fahrenheit(100));
    answers.put("BRINE-01", "sg100", warm.gravity().value().specific());
    answers.put("BRINE-01", "mu100", warm.viscosity().value().toCentipoise());
  }

  private static void water(Answers answers) {
    answers.put("WATER-01", "mu68", 1000 * Water.at(fahrenheit(68)).viscosityPaS());
    answers.put("WATER-01", "mu86", 1000 * Water.at(fahrenheit(86)).viscosityPaS());
    answers.put("WATER-01", "rho86", Water.at(fahrenheit(86)).densityKgPerM3());
    answers.put("WATER-01", "rho60", Water.at(fahrenheit(60)).densityKgPerM3());
  }

  private static void oils(Answers answers) {
    FluidModel model = model(Gravity.ofApi(30), 1.06);
    double oil = model.oil(fahrenheit(70)).viscosity().value().toCentipoise();
    double mixture = model.mixture(0.4, fahrenheit(70)).viscosity().value().toCentipoise();
    answers.put("EMUL-01", "ratio", mixture / oil);
    OilSpec measured = new OilSpec(Gravity.ofApi(26), List.of(point(40, 900), point(70, 180)));
    for (int at : new int[] {40, 55, 70}) {
      double mu = new Oil(measured).at(fahrenheit(at)).viscosity().value().toCentipoise();
      answers.put("D341-01", "mu" + at, mu);
    }
  }

  private static void liveOil(Answers answers) {
    Temperature hot = fahrenheit(200);
    LiveOil oil = new LiveOil(OilSpec.ofGravity(Gravity.ofApi(35)), 0.8, 650);
    AbsolutePressure deep = AbsolutePressure.ofPsia(3014.696);
    answers.put("PVT-02", "live", oil.viscosity(deep, hot).value().toCentipoise());
    answers.put("PVT-02", "dead", new BeggsRobinsonDead(35).at(hot).value().toCentipoise());
    answers.put("PVT-02", "bubble", Unit.PSI.fromSi(oil.bubblePointPascals(hot)));
  }

  private static FluidModel model(Gravity oil, double brine) {
    return new FluidModel(
        OilSpec.ofGravity(oil),
        new BrineSpec(Gravity.of(brine, Unit.SPECIFIC_GRAVITY)),
        EmulsionSpec.USUAL);
  }

  /** McCain's density at 60 degF, lb/ft3, by weight per cent of salt; as a gravity. */
  private static double mccain(double percent) {
    double density = 62.368 + 0.438603 * percent + 1.60074e-3 * percent * percent;
    return density * 16.018463 / Water.DENSITY_AT_60F;
  }

  private static Temperature fahrenheit(double value) {
    return Temperature.ofFahrenheit(value);
  }

  private static ViscosityPoint point(double fahrenheit, double centipoise) {
    return new ViscosityPoint(fahrenheit(fahrenheit), Viscosity.ofCentipoise(centipoise));
  }
}
