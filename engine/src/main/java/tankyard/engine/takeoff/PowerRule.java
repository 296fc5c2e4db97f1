package tankyard.engine.takeoff;

import tankyard.engine.lease.MotorDriven;
import tankyard.engine.lease.PowerPole;
import tankyard.engine.lease.Quote;
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
    drawing
        .lease()
        .motorDriven()
        .forEach(driven -> driven.wire().ifPresent(wire -> run(drawing, tally, driven, wire)));
  }

  private static void run(Drawing drawing, Tally tally, MotorDriven driven, Wire wire) {
    drawing
        .lease()
        .poleNearest(driven.at())
        .ifPresent(
            pole ->
                tally.add(
                    TakeoffKind.POWER,
                    ware(drawing, wire, pole),
                    wire.run(pole.at(), driven.at()).toFeet(),
                    Drawing.joint(driven.status(), pole.status()),
                    driven.id(),
                    pole.id()));
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
