package tankyard.engine.study;

import java.util.List;
import java.util.Optional;
import tankyard.engine.fluids.AbsolutePressure;
import tankyard.engine.fluids.GasState;
import tankyard.engine.lease.Separator;
import tankyard.engine.pipes.gasliquid.GasLiquidFlow;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.GasRate;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Gas that comes into a separator meant to stand full of liquid.
 *
 * @param gauge reading it was worked out for
 * @param free gas beside the liquid at that pressure
 * @param part of the inflow by volume there
 * @param section least inside diameter of an upright gas section that lets drops fall back
 */
public record VesselGas(
    Pressure gauge, GasRate free, Computed<Fraction> part, Computed<Length> section) {
  /** Up to this part of the inflow the gas is taken to leave with the oil. */
  public static final Fraction MOST = Fraction.ofPercent(1);

  /** Why one per cent. */
  public static final Source MOST_SOURCE =
      Source.commonPractice("a vessel counts as full of liquid up to 1 % gas by volume");

  private static final Source SOUDERS_BROWN =
      Source.published(
          "Souders-Brown, K 0.12 ft/s: upright vessel 5 ft high, API Spec 12J App. C, as copied in"
              + " a slide deck");
  private static final double K_FT_PER_S = 0.12;

  /** Whether the vessel can't be counted as full of liquid. */
  public boolean breaksFull() {
    return part.value().ratio() > MOST.ratio();
  }

  public boolean isMoreThan(VesselGas other) {
    return part.value().ratio() > other.part.value().ratio();
  }

  /**
   * What comes in a case.
   *
   * @param gaugePa reading of the gauge
   */
  public static Optional<VesselGas> of(CaseStudy study, Separator separator, double gaugePa) {
    return study.gas().flatMap(gas -> of(study, separator, gaugePa, gas));
  }

  private static Optional<VesselGas> of(
      CaseStudy study, Separator separator, double gaugePa, LeaseGas gas) {
    List<WellFlow> wells = study.wellsOf(separator.id());
    double oil = study.oilInto(separator);
    double liquid = wells.stream().mapToDouble(WellFlow::fluid).sum();
    double all = study.gasInto(separator);
    AbsolutePressure pressure = gas.absolute(Math.max(0, gaugePa));
    if (all == 0) {
      return Optional.empty();
    }
    double water = 1 - oil / liquid;
    GasLiquidFlow flow = gas.flow(liquid, water, all, study.ground());
    double free = flow.freeGas(pressure);
    if (free == 0) {
      return Optional.empty();
    }
    GasState state = gas.model().state(pressure, study.ground());
    double volume = free * gas.model().standardDensityKgPerM3() / state.gas().densityKgPerM3();
    Working volumeWorking =
        volume(state, free)
            .from(
                List.of(
                    flow.solution().orElseThrow().freeWorking(all, pressure), state.z().working()));
    return Optional.of(
        new VesselGas(
            Pressure.psiFromPascals(gaugePa),
            GasRate.ofMcfPerDay(Unit.MCF_PER_DAY.fromSi(free)),
            Computed.of(
                Fraction.ofRatio(volume / (volume + liquid)),
                () -> part(volume, liquid).from(List.of(volumeWorking))),
            section(study, state, volume, volumeWorking)));
  }

  private static Working volume(GasState state, double free) {
    return Working.of(
        "Gas at the vessel's pressure",
        "Qg",
        "178.1076*G*z*14.696/P*(T+459.67)/519.67",
        Unit.BARREL_PER_DAY,
        Source.definition("gas law, base 14.696 psia and 60 °F"),
        Term.of("G", "free gas", Unit.MCF_PER_DAY.fromSi(free), Unit.MCF_PER_DAY),
        Term.number("z", "compressibility factor", state.z().value().ratio()),
        Term.of("P", "absolute pressure", state.pressure().toPsia(), Unit.PSI),
        Term.of("T", "temperature", state.temperature(), Unit.FAHRENHEIT));
  }

  private static Working part(double volume, double liquid) {
    return Working.of(
        "Gas's part of what comes in, by volume",
        "x",
        "100*Qg/(Qg+Q)",
        Unit.PERCENT,
        Source.definition("parts of a flow"),
        rate("Qg", "gas at the vessel's pressure", volume),
        rate("Q", "oil and water", liquid));
  }

  private static Computed<Length> section(
      CaseStudy study, GasState state, double volume, Working volumeWorking) {
    double oil = study.oil().liquid().densityKgPerM3();
    double gas = state.gas().densityKgPerM3();
    double most = Unit.FOOT_PER_SECOND.toSi(K_FT_PER_S) * Math.sqrt((oil - gas) / gas);
    double metres = Math.sqrt(4 * volume / (Math.PI * most));
    return Computed.of(
        Length.of(Unit.FOOT.fromSi(metres), Unit.FOOT),
        () ->
            Working.of(
                    "Least bore of an upright gas section",
                    "D",
                    "sqrt(4*6.498360e-5*Qg/(pi*K*sqrt((ro-rg)/rg)))",
                    Unit.FOOT,
                    SOUDERS_BROWN,
                    rate("Qg", "gas at the vessel's pressure", volume),
                    Term.of("K", "Souders-Brown", K_FT_PER_S, Unit.FOOT_PER_SECOND),
                    density("ro", "density of the oil", oil),
                    density("rg", "density of the gas", gas))
                .from(List.of(volumeWorking, state.densityWorking())));
  }

  private static Term rate(String symbol, String words, double m3PerS) {
    return Term.of(symbol, words, Unit.BARREL_PER_DAY.fromSi(m3PerS), Unit.BARREL_PER_DAY);
  }

  private static Term density(String symbol, String words, double kgPerM3) {
    double pounds = Unit.POUND_PER_CUBIC_FOOT.fromSi(kgPerM3);
    return Term.of(symbol, words, pounds, Unit.POUND_PER_CUBIC_FOOT);
  }
}
