package tankyard.engine.study;

import java.util.List;
import tankyard.engine.fluids.LiquidState;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.vessels.GunBarrelLeg;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * The weight of liquid inside a gun barrel: oil from its outlet down to the interface, water below,
 * the air's pressure on top. Nothing can raise or lower it.
 *
 * @param level of the interface above the bottom, the leg at rest
 */
record GunBarrelHead(GunBarrel barrel, LiquidState oil, LiquidState brine, Length level) {
  private static final Source SOURCE =
      Source.definition("hydrostatics, fresh water 0.4331 psi/ft at 60 °F");

  static GunBarrelHead of(CaseStudy study, GunBarrel barrel) {
    Length level =
        study.oilFloats()
            ? new GunBarrelLeg(
                    barrel.oilOutletHeight(),
                    study.oil().gravity().value(),
                    study.brine().gravity().value(),
                    Length.ofFeet(0))
                .interfaceFor(GunBarrelCuts.of(barrel, study.lease().fluids()).stands().value())
                .value()
            : barrel.interfaceHeight();
    return new GunBarrelHead(barrel, study.oil(), study.brine(), level);
  }

  /** What weighs on the inlet; nothing where the fluid falls in from overhead. */
  Computed<Pressure> atInlet() {
    return at(barrel.inletHeight(), "What the liquid above its inlet weighs");
  }

  Computed<Pressure> atBottom() {
    return at(Length.ofFeet(0), "What the liquid weighs at the bottom");
  }

  /**
   * What a well at the height of the bottom feels, line loss left out.
   *
   * @param mix what stands in the flow line
   */
  Computed<Pressure> onWells(LiquidState mix) {
    double column = mix.liquid().staticPascals(barrel.inletHeight().metres());
    return Computed.of(
        Pressure.psiFromPascals(atInlet().value().pascals() + column),
        () ->
            Working.of(
                    "What a well on its ground feels, line loss left out",
                    "P",
                    "Pi+0.433101*SGm*zi",
                    Unit.PSI,
                    SOURCE,
                    Term.of("Pi", "weight of liquid above the inlet", atInlet().value(), Unit.PSI),
                    Term.number("SGm", "gravity in the flow line", mix.liquid().specificGravity()),
                    Term.of("zi", "inlet above the bottom", barrel.inletHeight(), Unit.FOOT))
                .from(List.of(atInlet().working())));
  }

  private Computed<Pressure> at(Length height, String title) {
    double top = barrel.oilOutletHeight().metres();
    double oilM = Math.max(0, top - Math.max(level.metres(), height.metres()));
    double waterM = Math.max(0, level.metres() - height.metres());
    return Computed.of(
        Pressure.psiFromPascals(
            oil.liquid().staticPascals(oilM) + brine.liquid().staticPascals(waterM)),
        () ->
            Working.of(
                title,
                "P",
                "0.433101*(SGo*ho+SGw*hw)",
                Unit.PSI,
                SOURCE,
                Term.number("SGo", "gravity of the oil", oil.liquid().specificGravity()),
                Term.of("ho", "oil above it", Unit.FOOT.fromSi(oilM), Unit.FOOT),
                Term.number("SGw", "gravity of the water", brine.liquid().specificGravity()),
                Term.of("hw", "water above it", Unit.FOOT.fromSi(waterM), Unit.FOOT)));
  }
}
