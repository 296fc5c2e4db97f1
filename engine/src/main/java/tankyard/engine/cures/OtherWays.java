package tankyard.engine.cures;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.lease.Separator;
import tankyard.engine.pumps.PumpPower;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.LegRun;
import tankyard.engine.study.VesselHead;
import tankyard.engine.units.Figures;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.window.PressureLimit;

/** Ways out by hand sums; none of them is in a bill. */
final class OtherWays {
  /** A common one: oil leaves at 18 ft, the interface is wanted at 10. From memory. */
  private static final double OIL_OUTLET_FT = GunBarrelInstead.OIL_OUTLET.toFeet();

  private static final double INTERFACE_FT = GunBarrelInstead.INTERFACE.toFeet();

  private OtherWays() {}

  static List<String> of(CureSite site) {
    List<String> ways = new ArrayList<>();
    site.leg()
        .ifPresent(
            leg -> {
              ways.add(transferPump(site, leg));
              ways.add(gunBarrel(site, leg));
            });
    return ways;
  }

  private static String transferPump(CureSite site, LegRun leg) {
    PressureLimit least = site.window().least().orElseThrow();
    double psi = least.lift().toPsi() + least.friction().toPsi();
    LiquidRate rate = LiquidRate.ofBarrelsPerDay(Unit.BARREL_PER_DAY.fromSi(leg.rate()));
    double horsepower =
        PumpPower.brake(rate, Pressure.ofPsi(Math.max(0, psi)), PumpPower.USUAL_EFFICIENCY)
            .value()
            .toHorsepower();
    return "A transfer pump behind a separator at low pressure: "
        + psi(psi)
        + " at the design "
        + Figures.significant(rate.toBarrelsPerDay(), 3)
        + " bbl/d"
        + (leg.isShared() ? " while the other separators send theirs, " : ", ")
        + Figures.significant(horsepower, 2)
        + " hp at the shaft. The wells then feel only the separator's own pressure; it needs power,"
        + " a suction tank or a level switch, and a way for the water when it stops.";
  }

  private static String gunBarrel(CureSite site, LegRun leg) {
    CaseStudy study = site.study(site.window().least().orElseThrow().caseId());
    Separator separator = site.separator();
    double oil = study.oil().liquid().specificGravity();
    double brine = study.brine().liquid().specificGravity();
    double weir = INTERFACE_FT + (OIL_OUTLET_FT - INTERFACE_FT) * oil / brine;
    double base = 0.4331 * (INTERFACE_FT * brine + (OIL_OUTLET_FT - INTERFACE_FT) * oil);
    VesselHead head = study.vessel(separator);
    double spare =
        Unit.FOOT.fromSi(head.groundM() - leg.controlM())
            + weir
            - leg.frictionPa() / leg.liquid().liquid().staticPascals(Unit.FOOT.toSi(1));
    return "A gun barrel with the oil leaving at "
        + Figures.significant(OIL_OUTLET_FT, 3)
        + " ft and the interface at "
        + Figures.significant(INTERFACE_FT, 3)
        + " ft: "
        + psi(base)
        + " at its base, whatever is set, and its water leaves over a weir at "
        + Figures.significant(weir, 3)
        + " ft. From there the water "
        + (spare >= 0
            ? "runs to the tank by itself, with " + Figures.significant(spare, 2) + " ft to spare."
            : "does not reach the tank by itself: it is "
                + Figures.significant(-spare, 2)
                + " ft short.");
  }

  private static String psi(double psi) {
    return Figures.significant(psi, 3) + " psi";
  }
}
