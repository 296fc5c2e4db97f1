package tankyard.engine.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Fluids;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.vessels.GunBarrelLeg;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** Works out the weir of a gun barrel. */
final class GunBarrelCuts {
  /** How far a gravity may be off: two hydrometers, two wells, a wet season. */
  static final double OFF = 0.03;

  private static final double QUARTERS_IN_A_FOOT = 48;
  private static final Length NO_LOSS = Length.ofFeet(0);
  private static final Source QUARTER =
      Source.commonPractice("cut to the quarter inch below: a nipple can add height, not take it");
  private static final Source TYPED = Source.lease("typed in this lease");
  private static final Source RANGE = Source.definition("the farthest of the weirs asked for");

  private final GunBarrel barrel;
  private final Fluids fluids;
  private final Computed<Length> weir;
  private final Computed<Length> stands;

  private GunBarrelCuts(GunBarrel barrel, Fluids fluids) {
    this.barrel = barrel;
    this.fluids = fluids;
    this.weir = leg(fluids.oil(), fluids.brine()).weirFor(wanted());
    this.stands = barrel.weirHeight().map(GunBarrelCuts::typed).orElse(weir);
  }

  /** Whether oil floats on water at all; only then can a gun barrel part them. */
  static boolean floats(Gravity oil, Gravity water) {
    return oil.specific() < water.specific();
  }

  static GunBarrelCut of(GunBarrel barrel, Fluids fluids) {
    return new GunBarrelCuts(barrel, fluids).result();
  }

  private GunBarrelCut result() {
    GunBarrelLeg leg = leg(fluids.oil(), fluids.brine());
    List<GunBarrelCut.Drift> drifts = drifts();
    Computed<Length> cut = toTheQuarter();
    return new GunBarrelCut(
        weir,
        cut,
        leg.interfaceFor(cut.value()),
        stands,
        leg.interfaceFor(stands.value()),
        leg.interfaceForAnInch(),
        drifts,
        nipple(drifts));
  }

  private GunBarrelLeg leg(Gravity oil, Gravity water) {
    return new GunBarrelLeg(barrel.oilOutletHeight(), oil, water, NO_LOSS);
  }

  /** In a lease that no file could hold it may be typed above the oil. */
  private Length wanted() {
    boolean inside = barrel.interfaceHeight().metres() <= barrel.oilOutletHeight().metres();
    return inside ? barrel.interfaceHeight() : barrel.oilOutletHeight();
  }

  private static Computed<Length> typed(Length height) {
    return Computed.of(
        height,
        () ->
            Working.of(
                "The weir as cut",
                "hw",
                "hc",
                Unit.FOOT,
                TYPED,
                Term.of("hc", "as typed", height, Unit.FOOT)));
  }

  private Computed<Length> toTheQuarter() {
    double exact = weir.value().toFeet();
    double quarter = Math.floor(exact * QUARTERS_IN_A_FOOT + 1e-9) / QUARTERS_IN_A_FOOT;
    return Computed.of(
        Length.ofFeet(quarter),
        () ->
            Working.of(
                    "The weir, to be cut to the quarter inch",
                    "hc",
                    "hw-r",
                    Unit.FOOT,
                    QUARTER,
                    Term.of("hw", "weir for the interface wanted", exact, Unit.FOOT),
                    Term.of("r", "rounded down by", exact - quarter, Unit.FOOT))
                .from(List.of(weir.working())));
  }

  private List<GunBarrelCut.Drift> drifts() {
    Gravity oil = fluids.oil();
    Gravity water = fluids.brine();
    List<GunBarrelCut.Drift> found = new ArrayList<>();
    for (double off : new double[] {-OFF, OFF}) {
      drift("water", oil, plus(water, off)).ifPresent(found::add);
    }
    for (double off : new double[] {-OFF, OFF}) {
      drift("oil", plus(oil, off), water).ifPresent(found::add);
    }
    barrel.otherWater().flatMap(w -> drift("water", oil, w)).ifPresent(found::add);
    barrel.otherOil().flatMap(o -> drift("oil", o, water)).ifPresent(found::add);
    return found;
  }

  private static Gravity plus(Gravity gravity, double off) {
    return Gravity.of(gravity.specific() + off, Unit.SPECIFIC_GRAVITY);
  }

  private Optional<GunBarrelCut.Drift> drift(String what, Gravity oil, Gravity water) {
    if (!floats(oil, water)) {
      return Optional.empty();
    }
    Gravity other = what.equals("oil") ? oil : water;
    GunBarrelLeg leg = leg(oil, water);
    return Optional.of(
        new GunBarrelCut.Drift(
            what + " of " + Figures.significant(other.specific(), 4) + " SG",
            oil,
            water,
            leg.interfaceFor(stands.value()),
            leg.weirFor(wanted())));
  }

  private Computed<Length> nipple(List<GunBarrelCut.Drift> drifts) {
    double now = stands.value().toFeet();
    double highest = now;
    double lowest = now;
    for (GunBarrelCut.Drift drift : drifts) {
      highest = Math.max(highest, drift.weir().value().toFeet());
      lowest = Math.min(lowest, drift.weir().value().toFeet());
    }
    double up = highest;
    double down = lowest;
    return Computed.of(
        Length.ofFeet(Math.max(up - now, now - down)),
        () ->
            Working.of(
                    "How far the weir must be set up or down",
                    "n",
                    "max(hh-hw,hw-hd)",
                    Unit.FOOT,
                    RANGE,
                    Term.of("hh", "highest weir asked for", up, Unit.FOOT),
                    Term.of("hd", "lowest weir asked for", down, Unit.FOOT),
                    Term.of("hw", "weir as it stands", now, Unit.FOOT))
                .from(drifts.stream().map(d -> d.weir().working()).toList()));
  }
}
