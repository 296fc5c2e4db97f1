package tankyard.engine.pipes.gasliquid;

import tankyard.engine.fluids.AbsolutePressure;
import tankyard.engine.fluids.Gas;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.units.Unit;
import tankyard.engine.verification.Answers;
import tankyard.engine.verification.CheckedRows;

/** Gas and liquid together against published values. */
class GasLiquidCheckedTest implements CheckedRows {
  private static final double FT = 0.3048;
  private static final double IN = 0.0254;

  @Override
  public String topic() {
    return "gas-liquid";
  }

  @Override
  public void compute(Answers answers) {
    tubing(answers);
    answers.put("2PH-02", "drop", over100m(1.163125, 0.30370768404083825, 90));
    answers.put("2PH-03", "drop", over100m(1.163125, 0.9, 0));
    answers.put("2PH-04", "drop", over100m(100, 0.3, 10));
  }

  private static void tubing(Answers answers) {
    double lb = Unit.POUND_PER_CUBIC_FOOT.toSi(1);
    Phases phases = new Phases(new Liquid(49.9 * lb, 3e-3), new Gas(1.79 * lb, 0.02e-3), 8e-3);
    BeggsBrill law = BeggsBrill.original(2.441 * IN, 0.0006 * IN);
    AbsolutePressure pressure = AbsolutePressure.ofPsia(346.6);
    Gradient up = law.at(0.79 * FT, 1.93 * FT, phases, Math.PI / 2, pressure);
    Gradient level = law.at(0.79 * FT, 1.93 * FT, phases, 0, pressure);
    Gradient payne =
        new BeggsBrill(law.boreM(), law.roughnessM(), true)
            .at(0.79 * FT, 1.93 * FT, phases, Math.PI / 2, pressure);
    answers.put("2PH-01", "gradient", psiPerFoot(up));
    answers.put("2PH-01", "payne", psiPerFoot(payne));
    answers.put("2PH-01", "holdup", up.holdUp());
    answers.put("2PH-01", "level", level.holdUp());
  }

  private static double psiPerFoot(Gradient gradient) {
    return Unit.PSI.fromSi(gradient.totalPaPerM() * FT);
  }

  private static double over100m(double kgPerS, double gasPart, double degrees) {
    Phases phases = new Phases(new Liquid(613.8, 5e-4), new Gas(141.3, 2e-5), 0.028);
    double bore = 0.077927;
    double area = Math.PI / 4 * bore * bore;
    return 100
        * BeggsBrill.original(bore, 1.8e-6)
            .at(
                (1 - gasPart) * kgPerS / 613.8 / area,
                gasPart * kgPerS / 141.3 / area,
                phases,
                Math.toRadians(degrees),
                new AbsolutePressure(119e5))
            .totalPaPerM();
  }
}
