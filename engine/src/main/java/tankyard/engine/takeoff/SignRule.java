package tankyard.engine.takeoff;

import tankyard.engine.lease.Tank;

/** Signs. */
final class SignRule implements TakeoffRule {
  @Override
  public String words() {
    return "A lease sign at the separator or gun barrel and a sign on every tank";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    Ware tankSign = drawing.stock().sundry("tank-sign", "Tank sign");
    for (Tank tank : drawing.staying(drawing.lease().tanks())) {
      tally.add(TakeoffKind.SIGN, tankSign, 1, tank.status(), tank.id());
    }
    Ware leaseSign = drawing.stock().sundry("lease-sign", "Lease sign");
    drawing
        .lease()
        .vessels()
        .filter(v -> v.status().stays())
        .findFirst()
        .ifPresent(s -> tally.add(TakeoffKind.SIGN, leaseSign, 1, s.status(), s.id()));
  }
}
