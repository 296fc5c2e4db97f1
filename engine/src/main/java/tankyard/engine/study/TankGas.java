package tankyard.engine.study;

import java.util.List;
import java.util.Map;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Vessel;
import tankyard.engine.units.GasRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.valves.GasThrough;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Gas that comes to the tanks in one case. No gas outlet can be drawn, so what the wells make goes
 * to the oil tank with the oil, and to the water tank when a dump valve sticks open: no more than
 * the valve passes, and no more than the wells make.
 *
 * @param gaugePa reading by separator
 */
record TankGas(CaseStudy study, Map<String, Double> gaugePa) {
  private static final Source WELLS = Source.definition("sum over the wells of the case");
  private static final Source LESSER =
      Source.definition("the lesser of what the valve passes and what comes");

  Computed<GasRate> into(Tank tank) {
    Service service = tank.duty() == Tank.Duty.OIL ? Service.OIL_LEG : Service.WATER_LEG;
    List<Computed<GasRate>> parts =
        study.feeding(tank, service).stream()
            .map(vessel -> tank.duty() == Tank.Duty.OIL ? ofWells(vessel) : blowBy(vessel))
            .toList();
    double all = parts.stream().mapToDouble(p -> p.value().in(Unit.CUBIC_FOOT_PER_HOUR)).sum();
    return parts.size() == 1 ? parts.get(0) : ofWells(all, "gas that comes with the liquid");
  }

  private Computed<GasRate> ofWells(Vessel vessel) {
    return ofWells(Unit.CUBIC_FOOT_PER_HOUR.fromSi(study.gasInto(vessel)), "gas of the wells");
  }

  private static Computed<GasRate> ofWells(double scfPerHour, String words) {
    return Computed.of(
        GasRate.of(scfPerHour, Unit.CUBIC_FOOT_PER_HOUR),
        () ->
            Working.of(
                "Gas that comes in",
                "Gg",
                "Gw",
                Unit.CUBIC_FOOT_PER_HOUR,
                WELLS,
                Term.of("Gw", words, scfPerHour, Unit.CUBIC_FOOT_PER_HOUR)));
  }

  private Computed<GasRate> blowBy(Vessel vessel) {
    Computed<GasRate> comes = ofWells(vessel);
    if (study.gas().isEmpty() || !(vessel instanceof Separator separator)) {
      return comes;
    }
    LeaseGas gas = study.gas().get();
    Computed<GasRate> passes =
        GasThrough.wideOpen(
            separator.dumpValve().cv(),
            Pressure.psiFromPascals(gaugePa.getOrDefault(separator.id(), 0.0)),
            gas.air(),
            gas.gravity(),
            study.ground());
    double lesser =
        Math.min(
            passes.value().in(Unit.CUBIC_FOOT_PER_HOUR),
            comes.value().in(Unit.CUBIC_FOOT_PER_HOUR));
    return Computed.of(
        GasRate.of(lesser, Unit.CUBIC_FOOT_PER_HOUR),
        () ->
            Working.of(
                    "Gas past a dump valve stuck open",
                    "Gg",
                    "min(G,Gw)",
                    Unit.CUBIC_FOOT_PER_HOUR,
                    LESSER,
                    Term.of("G", "the valve passes", passes.value(), Unit.CUBIC_FOOT_PER_HOUR),
                    Term.of("Gw", "gas of the wells", comes.value(), Unit.CUBIC_FOOT_PER_HOUR))
                .from(List.of(passes.working())));
  }
}
