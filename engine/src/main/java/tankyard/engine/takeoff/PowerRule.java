package tankyard.engine.takeoff;

import java.util.Optional;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.PowerPole;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Well;
import tankyard.engine.lease.Wire;

/** Power poles, and the wire from them to the motors. */
final class PowerRule implements TakeoffRule {
  @Override
  public String words() {
    return "Every power pole with meter and disconnect, and the run of wire to every motor whose wire"
        + " is typed, all its conductors together";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    for (PowerPole pole : drawing.staying(drawing.lease().powerPoles())) {
      tally.add(
          TakeoffKind.POWER,
          drawing.stock().sundry("power-pole", "Power pole with meter and disconnect"),
          1,
          pole.status(),
          pole.id());
    }
    for (Well well : drawing.staying(drawing.lease().wells())) {
      wire(drawing, tally, well, well.motor().flatMap(m -> well.wire()));
    }
    for (InjectionPump pump : drawing.staying(drawing.lease().injectionPumps())) {
      wire(drawing, tally, pump, pump.motor().flatMap(m -> pump.wire()));
    }
  }

  private static void wire(Drawing drawing, Tally tally, Thing motor, Optional<Wire> typed) {
    Optional<PowerPole> pole = drawing.lease().poleNearest(motor.at());
    if (typed.isEmpty() || pole.isEmpty()) {
      return;
    }
    Wire wire = typed.get();
    boolean isNew = motor.status() == Status.NEW || pole.get().status() == Status.NEW;
    tally.add(
        TakeoffKind.POWER,
        ware(drawing, wire, pole.get()),
        wire.run(pole.get().at(), motor.at()).toFeet(),
        isNew ? Status.NEW : Status.HAVE,
        motor.id(),
        pole.get().id());
  }

  private static Ware ware(Drawing drawing, Wire wire, PowerPole pole) {
    String id =
        String.join(
            "-",
            "wire",
            wire.gauge().words().replace("#", "").replace('/', '-'),
            wire.metal().words(),
            pole.phases().words().replace(' ', '-'));
    String text = "Run of wire, " + wire.words() + ", " + pole.phases().words();
    return drawing.stock().sundry(id, text, Quote.Basis.FOOT);
  }
}
