package tankyard.engine.takeoff;

import java.util.Optional;
import tankyard.engine.catalog.NominalSize;
import tankyard.engine.catalog.PumpType;
import tankyard.engine.catalog.ValveType;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Unit;

/** Injection pumps with motor, relief valve, strainer and power. */
final class InjectionPumpRule implements TakeoffRule {
  private static final NominalSize USUAL = NominalSize.ofInches(2);

  @Override
  public String words() {
    return "For every injection pump: pump with motor, anchors, relief valve piped back with no"
        + " valve under it, suction strainer, discharge gauge, starter with low-pressure cut-out;"
        + " one power drop";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    for (InjectionPump pump : drawing.staying(drawing.lease().injectionPumps())) {
      Stock stock = drawing.stock();
      Status status = pump.status();
      String id = pump.id();
      tally.add(TakeoffKind.INJECTION_PUMP, pump(drawing, pump), 1, status, id);
      tally.addWith(
          TakeoffKind.INJECTION_PUMP,
          stock.sundry("pump-skid", "Pump anchors and mat"),
          1,
          status,
          id);
      tally.add(
          TakeoffKind.RELIEF_VALVE,
          stock.injectionValve(ValveType.Duty.RELIEF, size(drawing, pump, Service.INJECTION)),
          1,
          status,
          id);
      tally.add(TakeoffKind.FITTINGS, strainer(drawing, pump), 1, status, id);
      tally.add(
          TakeoffKind.GAUGE,
          stock.sundry("gauge-0-1000", "Pressure gauge 0 to 1000 psi"),
          1,
          status,
          id);
      tally.addWith(
          TakeoffKind.POWER, stock.sundry("motor-starter", "Motor starter"), 1, status, id);
      tally.add(
          TakeoffKind.POWER,
          stock.work("power-drop", "Power drop, pole to panel", Quote.Basis.LOT),
          1,
          status,
          id);
    }
  }

  private static Ware strainer(Drawing drawing, InjectionPump pump) {
    return drawing
        .stock()
        .fitting(
            tankyard.engine.catalog.Fitting.Part.STRAINER,
            tankyard.engine.catalog.Material.STEEL,
            size(drawing, pump, Service.SUCTION));
  }

  private static Ware pump(Drawing drawing, InjectionPump pump) {
    Optional<PumpType> named =
        pump.model().flatMap(id -> drawing.catalog().item(id, PumpType.class));
    return named
        .map(Ware::each)
        .orElseGet(
            () ->
                Ware.unlisted(
                    "Injection pump with motor, "
                        + Figures.significant(pump.rate().in(Unit.BARREL_PER_DAY), 4)
                        + " bbl/d"
                        + pump.motor()
                            .map(p -> ", " + Figures.significant(p.toHorsepower(), 3) + " hp")
                            .orElse(""),
                    Quote.Basis.EACH));
  }

  private static NominalSize size(Drawing drawing, InjectionPump pump, Service service) {
    return drawing
        .linesAt(pump)
        .filter(line -> line.service() == service)
        .map(drawing::size)
        .findFirst()
        .orElse(USUAL);
  }
}
