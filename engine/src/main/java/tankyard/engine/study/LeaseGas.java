package tankyard.engine.study;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import tankyard.engine.fluids.AbsolutePressure;
import tankyard.engine.fluids.Atmosphere;
import tankyard.engine.fluids.GasModel;
import tankyard.engine.fluids.GasSpec;
import tankyard.engine.fluids.HeldGas;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.fluids.OilSpec;
import tankyard.engine.lease.Site;
import tankyard.engine.pipes.gasliquid.GasLiquidFlow;
import tankyard.engine.pipes.gasliquid.GasLiquidFluids;
import tankyard.engine.pipes.gasliquid.GasLiquidLine;
import tankyard.engine.pipes.gasliquid.GasLiquidWorking;
import tankyard.engine.pipes.gasliquid.Solution;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;

/**
 * The gas the wells send down the flow lines: what it is, how much of it the oil holds, and how a
 * line is marched with it. There is none of this on a lease whose wells have no gas typed.
 */
final class LeaseGas {
  /** A psi: about where warm water boils. */
  private static final double LEAST_PA = Unit.PSI.toSi(1);

  private final GasModel model;
  private final OilSpec oil;
  private final double gravity;
  private final AbsolutePressure air;

  private LeaseGas(OilSpec oil, double gravity, AbsolutePressure air) {
    this.model = new GasModel(GasSpec.ofGravity(gravity));
    this.oil = oil;
    this.gravity = gravity;
    this.air = air;
  }

  /** Empty where no well makes gas with its liquid. */
  static Optional<LeaseGas> of(Survey survey, Collection<WellFlow> wells) {
    if (wells.stream().noneMatch(w -> w.gas() > 0)) {
      return Optional.empty();
    }
    return Optional.of(
        new LeaseGas(
            survey.oilSpec(),
            survey.lease().fluids().gasGravity().orElse(Defaults.GAS_GRAVITY).ratio(),
            air(survey.lease().site())));
  }

  static AbsolutePressure air(Site site) {
    return Atmosphere.at(site.altitude().map(Elevation::metres).orElse(Defaults.ALTITUDE.metres()));
  }

  /** Against air. */
  double gravity() {
    return gravity;
  }

  AbsolutePressure air() {
    return air;
  }

  GasModel model() {
    return model;
  }

  /**
   * Never less than the least a line can hold: the weight of liquid between a gauge and an inlet
   * drawn far above it would ask for a pull that no liquid bears.
   */
  AbsolutePressure absolute(double gaugePa) {
    return AbsolutePressure.of(
        Pressure.psiFromPascals(Math.max(gaugePa, LEAST_PA - air.pascals())), air);
  }

  /** Of the gas at the lease's own pressures; they hardly differ along the lines. */
  List<Caution> cautions(Temperature temperature) {
    return model.state(air, temperature).cautions();
  }

  /** Oil, water and all the gas together, m3/s; the size of the flow, whichever way it goes. */
  GasLiquidFlow flow(double liquid, double waterCut, double gas, Temperature temperature) {
    HeldGas held = new HeldGas(oil, gravity, temperature, air);
    return new GasLiquidFlow(liquid, gas, Optional.of(new Solution(liquid * (1 - waterCut), held)));
  }

  /**
   * The march of a line against its flow; with Payne's factors, see docs/decisions. Gas has the
   * ground's temperature all along, the liquid's weight too; its thickness is that of each piece.
   */
  GasLiquidWorking march(LineFill fill, boolean forward, GasLiquidFlow flow, double downstreamPa) {
    GasLiquidLine line = new GasLiquidLine(forward ? fill.law() : fill.law().reversed(), true);
    List<GasLiquidFluids> fluids = new ArrayList<>();
    for (Liquid piece : fill.pieces()) {
      GasLiquidFluids here =
          new GasLiquidFluids(
              piece, model, fill.liquid().temperature(), GasLiquidFluids.USUAL_TENSION);
      fluids.add(forward ? fluids.size() : 0, here);
    }
    return new GasLiquidWorking(
        line, flow, fluids, line.march(flow, fluids, absolute(downstreamPa), air));
  }
}
