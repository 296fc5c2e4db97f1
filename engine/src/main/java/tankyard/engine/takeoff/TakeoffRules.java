package tankyard.engine.takeoff;

import java.util.List;

/** Every rule, in the order of the list that comes out. */
public final class TakeoffRules {
  private static final List<TakeoffRule> ALL =
      List.of(
          new PipeRule(),
          new TrenchRule(),
          new BeddingRule(),
          new LineFittingRule(),
          new CornerRule(),
          new CouplingRule(),
          new SupportRule(),
          new WellRule(),
          new TeeRule(),
          new NozzleRule(),
          new CheckValveRule(),
          new SeparatorRule(),
          new GunBarrelRule(),
          new TankRule(),
          new InjectionPumpRule(),
          new InjectionWellRule(),
          new PowerRule(),
          new PadAndBermRule(),
          new SignRule(),
          new CrewRule(),
          new TakeOutRule());

  private TakeoffRules() {}

  public static List<TakeoffRule> all() {
    return ALL;
  }
}
