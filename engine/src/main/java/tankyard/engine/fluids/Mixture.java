package tankyard.engine.fluids;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Viscosity;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Oil and water in one line. Density by volume. Below the turning water cut the oil carries the
 * water and the mixture is thicker than the oil: {@code mu = mu_oil (1 + 2.5 phi + 14.1 phi^2)},
 * phi the water cut (Guth and Simha 1936 form, from memory; made for phi below 0.4). Where somebody
 * said how tight the emulsion is, Pal and Rhodes' law 1989 stands in its place: {@code mu = mu_oil
 * (1 + (phi/p)/(1.187 - phi/p))^2.49}, p the share at which it is a hundred times as thick; it is
 * held there beyond. From the turning cut on the water carries the oil and the brine's own
 * viscosity is taken. The jump between the two is real in kind and rough in size: near it, both
 * answers are worth a look.
 */
final class Mixture {
  private static final double GUTH_SIMHA_LIMIT = 0.4;
  private static final double NEAR = 0.1;
  private static final Source BY_VOLUME = Source.definition("parts by volume");
  private static final Source GUTH_SIMHA =
      Source.memory("Guth and Simha 1936: drops of water in oil");
  private static final Source PAL_RHODES =
      Source.published(
          "Pal and Rhodes 1989, J. Rheol. 33:1021, form and fitted range as restated in source notes;"
              + " which p is loose, medium or tight is common practice, no source");
  private static final Source WATER_CARRIES =
      Source.commonPractice("water-continuous mixture taken as thick as its water");

  private final LiquidState oil;
  private final LiquidState brine;
  private final double waterCut;
  private final double inversion;
  private final Optional<Tightness> tightness;

  Mixture(LiquidState oil, LiquidState brine, double waterCut, EmulsionSpec emulsion) {
    this.oil = oil;
    this.brine = brine;
    this.waterCut = waterCut;
    inversion = emulsion.inversionWaterCut().ratio();
    tightness = emulsion.tightness();
  }

  LiquidState state() {
    List<Caution> all = new ArrayList<>(cautions());
    (waterCut < inversion ? oil.cautions() : brine.cautions()).forEach(all::add);
    return LiquidState.of("oil and water", oil.temperature(), gravity(), viscosity().with(all));
  }

  /** Whether a viscosity was worked out for oil that carries water. */
  static boolean isOilCarrying(Working viscosity) {
    return viscosity.source().equals(GUTH_SIMHA) || viscosity.source().equals(PAL_RHODES);
  }

  private Computed<Gravity> gravity() {
    double so = oil.gravity().value().specific();
    double sw = brine.gravity().value().specific();
    return Computed.of(
        Gravity.of(so * (1 - waterCut) + sw * waterCut, Unit.SPECIFIC_GRAVITY),
        () ->
            Working.of(
                    "Gravity of oil and water together",
                    "SG",
                    "SGo*(1-phi)+SGw*phi",
                    Unit.SPECIFIC_GRAVITY,
                    BY_VOLUME,
                    Term.number("SGo", "gravity of the oil here", so),
                    Term.number("SGw", "gravity of the brine here", sw),
                    Term.number("phi", "water cut", waterCut))
                .from(List.of(oil.gravity().working(), brine.gravity().working())));
  }

  private Computed<Viscosity> viscosity() {
    if (waterCut >= inversion) {
      return waterCarries();
    }
    return tightness.map(this::oilCarries).orElseGet(this::oilCarries);
  }

  private Computed<Viscosity> oilCarries() {
    double muOil = oil.viscosity().value().toCentipoise();
    double thicker = 1 + 2.5 * waterCut + 14.1 * waterCut * waterCut;
    return Computed.of(
        Viscosity.ofCentipoise(muOil * thicker),
        () ->
            Working.of(
                    "Viscosity, the oil carrying the water",
                    "mu",
                    "mu_oil*(1+2.5*phi+14.1*phi^2)",
                    Unit.CENTIPOISE,
                    GUTH_SIMHA,
                    Term.of("mu_oil", "viscosity of the oil", muOil, Unit.CENTIPOISE),
                    Term.number("phi", "water cut", waterCut))
                .from(List.of(oil.viscosity().working())));
  }

  private Computed<Viscosity> oilCarries(Tightness tight) {
    double muOil = oil.viscosity().value().toCentipoise();
    double counted = Math.min(waterCut, tight.hundredfold());
    double x = counted / tight.hundredfold();
    double thicker = Math.pow(1 + x / (1.187 - x), 2.49);
    return Computed.of(
        Viscosity.ofCentipoise(muOil * thicker),
        () ->
            Working.of(
                    "Viscosity, the oil carrying the water",
                    "mu",
                    "mu_oil*(1+(phi/p)/(1.187-phi/p))^2.49",
                    Unit.CENTIPOISE,
                    PAL_RHODES,
                    Term.of("mu_oil", "viscosity of the oil", muOil, Unit.CENTIPOISE),
                    Term.number("phi", "water cut, p at the most", counted),
                    Term.number(
                        "p", "share at which it is 100 times as thick", tight.hundredfold()))
                .from(List.of(oil.viscosity().working())));
  }

  private Computed<Viscosity> waterCarries() {
    double muWater = brine.viscosity().value().toCentipoise();
    return Computed.of(
        brine.viscosity().value(),
        () ->
            Working.of(
                    "Viscosity, the water carrying the oil",
                    "mu",
                    "mu_w",
                    Unit.CENTIPOISE,
                    WATER_CARRIES,
                    Term.of("mu_w", "viscosity of the brine", muWater, Unit.CENTIPOISE))
                .from(List.of(brine.viscosity().working())));
  }

  private List<Caution> cautions() {
    List<Caution> said = new ArrayList<>();
    double limit = tightness.map(Tightness::hundredfold).orElse(GUTH_SIMHA_LIMIT);
    if (waterCut > limit && waterCut < inversion) {
      said.add(
          new Caution(
              "emulsion-out-of-range",
              Said.percent(waterCut)
                  + " water is above the "
                  + Said.percent(limit)
                  + " the emulsion law was made for; measure the"
                  + " emulsion's viscosity before spending on it."));
    }
    if (Math.abs(waterCut - inversion) < NEAR) {
      said.add(
          new Caution(
              "emulsion-near-inversion",
              Said.percent(waterCut)
                  + " water is close to the "
                  + Said.percent(inversion)
                  + " at which water starts to carry the oil; the viscosity could be either side's,"
                  + " so look at both."));
    }
    return said;
  }
}
