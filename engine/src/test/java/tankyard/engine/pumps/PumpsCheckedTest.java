package tankyard.engine.pumps;

import tankyard.engine.fluids.Atmosphere;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.fluids.Water;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Power;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Rotation;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.verification.Answers;
import tankyard.engine.verification.CheckedRows;

/** Pumps against handbook and textbook examples. */
class PumpsCheckedTest implements CheckedRows {
  private static final Fraction NO_SLIP = Fraction.ofPercent(0);

  @Override
  public String topic() {
    return "pumps";
  }

  @Override
  public void compute(Answers answers) {
    power(answers);
    triplex(answers);
    suction(answers);
    simplex(answers);
    for (int feet : new int[] {1000, 5000}) {
      double pascals = Atmosphere.at(Length.ofFeet(feet).metres()).pascals();
      answers.put("AIR-01", String.valueOf(feet), Unit.PSI.fromSi(pascals));
    }
  }

  private static void power(Answers answers) {
    double density = 62.364 * 0.45359237 / Math.pow(0.3048, 3);
    Pressure rise = Pressure.of(new Liquid(density, 1e-3).staticPascals(428 * 0.3048), Unit.PASCAL);
    Power brake = PumpPower.brake(LiquidRate.ofGpm(700), rise, Fraction.ofPercent(70.7)).value();
    answers.put("PUMP-01", "hp", brake.toHorsepower());
    double hours =
        PumpPower.kilowattHours(brake, Fraction.ofPercent(95 * 0.96), Time.ofHours(8000));
    answers.put("PUMP-01", "cost", 0.12 * hours);
    answers.put(
        "PUMP-03",
        "hp",
        PumpPower.hydraulic(LiquidRate.ofGpm(200), Pressure.ofPsi(3.87 * 20))
            .value()
            .toHorsepower());
  }

  private static void triplex(Answers answers) {
    PlungerPump full =
        new PlungerPump(3, Length.of(7, Unit.INCH), Length.of(12, Unit.INCH), NO_SLIP);
    PlungerPump slipping = new PlungerPump(3, full.plunger(), full.stroke(), Fraction.ofPercent(5));
    Rotation speed = Rotation.ofRpm(80);
    answers.put("PUMP-02", "turn", full.perTurn().value().toBarrels());
    answers.put("PUMP-02", "turn95", slipping.perTurn().value().toBarrels());
    answers.put("PUMP-02", "gpm", slipping.rate(speed).value().toGpm());
    answers.put("PUMP-02", "gpm100", full.rate(speed).value().toGpm());
  }

  private static void suction(Answers answers) {
    Gravity benzene = Gravity.of(865 / Water.DENSITY_AT_60F, Unit.SPECIFIC_GRAVITY);
    Suction suction = new Suction(101325, 26200, benzene);
    Length none = Length.ofFeet(0);
    answers.put("NPSH-01", "npsh", suction.available(-1.8 / 0.3048, none, none).value().metres());
  }

  private static void simplex(Answers answers) {
    PlungerPump pump =
        new PlungerPump(
            1, Length.of(150, Unit.MILLIMETRE), Length.of(300, Unit.MILLIMETRE), NO_SLIP);
    Rotation speed = Rotation.ofRpm(50);
    LiquidRate rate = pump.rate(speed).value();
    Pressure lift = Pressure.of(1000 * 9.81 * 25, Unit.PASCAL);
    double flow = rate.cubicMetresPerSecond();
    answers.put("ACC-01", "rate", flow);
    answers.put("ACC-01", "power", PumpPower.hydraulic(rate, lift).value().watts() / 1000);
    answers.put("ACC-01", "slip", 100 * (1 - 4.2e-3 / flow));
    answers.put(
        "ACC-01", "head", Acceleration.onePlungerM(22, 1.5 * 1.5, speed.radiansPerSecond(), 0.15));
  }
}
