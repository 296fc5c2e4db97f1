package tankyard.engine.pipes;

import static java.lang.Math.PI;

import java.util.Map;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.fluids.Water;
import tankyard.engine.numeric.Roots;
import tankyard.engine.verification.Answers;
import tankyard.engine.verification.CheckedRows;

/** Pipe friction against textbook and handbook examples; their sources stand in the rows. */
class PipesCheckedTest implements CheckedRows {
  private static final double FT = 0.3048;
  private static final double IN = 0.0254;
  private static final double PSI = 6894.757293168361;
  private static final double GAL = 0.003785411784;
  private static final double LB_PER_FT3 = 0.45359237 / (FT * FT * FT);

  @Override
  public String topic() {
    return "pipes";
  }

  @Override
  public void compute(Answers answers) {
    metricMain(answers);
    longMain(answers);
    fuelOil(answers);
    hotWater(answers);
    colebrookPoints(answers);
    viscousOil(answers);
    upTwoFloors(answers);
    hazenWilliams(answers);
    siphon(answers);
    fullTurbulence(answers);
  }

  private static PipeFlow pipe(double length, double bore, double roughness, Liquid liquid) {
    return new PipeFlow(
        new PipeRun(bore, roughness, PipePath.straight(length, 0), MinorLosses.NONE), liquid);
  }

  private static double head(double pascals, Liquid liquid) {
    return pascals / liquid.staticPascals(1);
  }

  private static void metricMain(Answers answers) {
    Liquid water = new Liquid(1000, 1000 * 1.023053e-6);
    PipeFlow pipe = pipe(100, 0.5, 0.046e-3, water);
    FlowState state = pipe.state(0.416);
    answers.put("FRIC-01", "velocity", state.velocityMPerS());
    answers.put("FRIC-01", "re", state.reynolds());
    answers.put("FRIC-01", "f", state.frictionFactor());
    answers.put("FRIC-01", "loss", head(pipe.drop(0.416).pascals(), water));
  }

  private static void longMain(Answers answers) {
    double flow = 4 * FT * FT * FT;
    double bore = 20 * IN;
    double viscosity = 4 * flow / (PI * bore) / 248624.7 * 999;
    Liquid water = new Liquid(999, viscosity);
    PipeFlow pipe = pipe(10560 * FT, bore, 0.0005 * FT, water);
    answers.put("FRIC-02", "f", pipe.state(flow).frictionFactor());
    answers.put("FRIC-02", "loss", head(pipe.drop(flow).pascals(), water) / FT);
  }

  private static void fuelOil(Answers answers) {
    double density = 0.815 * Water.DENSITY_AT_60F;
    Liquid oil = new Liquid(density, 2.7e-6 * density);
    double bore = 0.05248;
    double flow = 2 * GAL;
    PipeFlow pipe = pipe(100 * FT, bore, 0.0018 * IN, oil);
    double velocity = pipe.state(flow).velocityMPerS();
    double printed = DarcyWeisbach.pascals(0.0230 * 100 * FT / bore, density, velocity);
    answers.put("FRIC-03", "loss-printed-f", printed / PSI);
    answers.put("FRIC-03", "f", pipe.state(flow).frictionFactor());
    answers.put("FRIC-03", "loss", pipe.drop(flow).pascals() / PSI);
  }

  private static void hotWater(Answers answers) {
    double poundForce = 0.45359237 * Water.STANDARD_GRAVITY;
    Liquid water = new Liquid(60 * LB_PER_FT3, 1.978e-7 * poundForce / (FT * FT));
    double flow = 700.0 / 60 * FT * FT * FT;
    double bore = 20 * IN;
    FlowState state = pipe(100 * FT, bore, 8e-5 * bore, water).state(flow);
    double printed =
        DarcyWeisbach.pascals(
            0.012 * 100 * FT / bore, water.densityKgPerM3(), state.velocityMPerS());
    answers.put("FRIC-04", "velocity", state.velocityMPerS() / FT);
    answers.put("FRIC-04", "re", state.reynolds());
    answers.put("FRIC-04", "loss-printed-f", head(printed, water) / FT);
  }

  private static void colebrookPoints(Answers answers) {
    answers.put("FRIC-05", "re1e5-r1e-4", FrictionFactor.at(1e5, 1e-4).factor());
    Map.of(
            "re5000-r0", new double[] {5000, 0},
            "re10000-r0.0001", new double[] {1e4, 1e-4},
            "re50000-r0.001", new double[] {5e4, 1e-3},
            "re100000-r0.005", new double[] {1e5, 5e-3},
            "re1e+06-r1e-05", new double[] {1e6, 1e-5},
            "re1e+06-r0.002", new double[] {1e6, 2e-3},
            "re1e+07-r5e-05", new double[] {1e7, 5e-5},
            "re1e+08-r0.001", new double[] {1e8, 1e-3})
        .forEach(
            (key, at) -> answers.put("FRIC-05", key, FrictionFactor.at(at[0], at[1]).factor()));
  }

  private static void viscousOil(Answers answers) {
    Liquid oil = new Liquid(900, 0.4);
    PipeFlow pipe = pipe(10, 0.02, 0, oil);
    double drop = pipe.drop(2e-5).pascals();
    answers.put("LAM-01", "re", pipe.state(2e-5).reynolds());
    answers.put("LAM-01", "loss", drop / 1000);
    answers.put("LAM-01", "slope", -Math.toDegrees(Math.asin(drop / oil.staticPascals(10))));
  }

  private static void upTwoFloors(Answers answers) {
    double slug = 32.17404855643044 * 0.45359237;
    double poundForce = slug * FT;
    Liquid water = new Liquid(1.94 * slug / (FT * FT * FT), 2.34e-5 * poundForce / (FT * FT));
    double bore = 0.0625 * FT;
    double flow = 0.0267 * FT * FT * FT;
    // The outlet's extra velocity head is asked for beside the pipe's losses.
    double outlet = flow / (PI / 4 * 0.25 * IN * IN);
    double velocity = flow / (PI / 4 * bore * bore);
    double density = water.densityKgPerM3();
    double ends =
        DarcyWeisbach.pascals(1, density, outlet) - DarcyWeisbach.pascals(1, density, velocity);
    double lift = water.staticPascals(20 * FT) + ends;
    double friction = DarcyWeisbach.pascals(0.0215 * 60 * FT / bore, density, velocity);
    double fittings = DarcyWeisbach.pascals(18, density, velocity);
    PipeRun run =
        new PipeRun(
            bore,
            5e-6 * FT,
            PipePath.of(new double[] {0, 60 * FT}, new double[] {0, 20 * FT}),
            MinorLosses.ofK(18));
    double own = LineLaw.of(run).march(flow, water, 0).upstreamPascals() + ends;
    answers.put("MINOR-01", "re", new PipeFlow(run, water).state(flow).reynolds());
    answers.put("MINOR-01", "lift", lift / (poundForce / (FT * FT)));
    answers.put("MINOR-01", "friction-printed-f", (lift + friction) / PSI);
    answers.put("MINOR-01", "all-printed-f", (lift + friction + fittings) / PSI);
    answers.put("MINOR-01", "all", own / PSI);
  }

  private static void hazenWilliams(Answers answers) {
    HazenWilliams law = new HazenWilliams(3000 * FT, 3 * IN, 140, 1);
    double perFoot = Water.DENSITY_AT_60F * Water.STANDARD_GRAVITY * FT;
    answers.put("HW-01", "loss", law.drop(90 * GAL / 60).pascals() / perFoot);
    double fieldPsi = HazenWilliams.fieldPsi(90, 3000, 3, 140);
    answers.put("HW-01", "field", fieldPsi * PSI / perFoot);
  }

  private static void siphon(Answers answers) {
    Liquid water = new Liquid(1000, 1e-3);
    double bore = 0.1;
    double darcy = 4 * 0.02;
    double velocity =
        Roots.between(
            "velocity",
            v -> DarcyWeisbach.pascals(darcy * 700 / bore, 1000, v) - water.staticPascals(10),
            0,
            10);
    double toSummit = DarcyWeisbach.pascals(darcy * 300 / bore + 1, 1000, velocity);
    answers.put("SIPH-01", "flow", 1000 * velocity * PI / 4 * bore * bore);
    answers.put("SIPH-01", "summit", 10.3 - 1.4 - head(toSummit, water));
  }

  private static void fullTurbulence(Answers answers) {
    Map.ofEntries(
            Map.entry("0.5", 0.622),
            Map.entry("0.75", 0.824),
            Map.entry("1", 1.049),
            Map.entry("1.25", 1.380),
            Map.entry("1.5", 1.610),
            Map.entry("2", 2.067),
            Map.entry("2.5", 2.469),
            Map.entry("3", 3.068),
            Map.entry("4", 4.026),
            Map.entry("6", 6.065),
            Map.entry("8", 7.981),
            Map.entry("10", 10.02),
            Map.entry("12", 11.938))
        .forEach(
            (size, bore) ->
                answers.put("CRANE-FT", size + " in", FullTurbulence.factor(bore * IN)));
  }
}
