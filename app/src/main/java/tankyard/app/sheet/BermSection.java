package tankyard.app.sheet;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import tankyard.app.edit.Change;
import tankyard.app.field.Fields;
import tankyard.app.field.Part;
import tankyard.engine.lease.Berm;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Site;
import tankyard.engine.lease.Tank;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;

/** The bermed pad. */
final class BermSection {
  private static final Part<Lease, Optional<Berm>> PLACE =
      Part.<Lease, Site>of(Lease.class, "site").then(Part.of(Site.class, "berm"));

  /** Room to walk between the outermost tank and the wall, ft. */
  private static final double WALKWAY_FT = 10;

  private BermSection() {}

  static void fill(SheetForm sheet) {
    sheet.form.section("Berm");
    if (PLACE.in(sheet.lease()).isPresent()) {
      fields(sheet);
      sheet.form.action(
          sheet.button(
              "berm-remove",
              "Remove",
              "Take the berm out of the lease",
              lease -> Change.of("Take out the berm", l -> PLACE.with(l, Optional.empty()))));
    } else {
      sheet.form.action(
          sheet.button(
              "berm-add",
              "Draw one round the tanks",
              "A rectangle round all tanks, with room to walk; its size can be changed after",
              lease ->
                  Change.of("Draw a berm", l -> PLACE.with(l, Optional.of(around(l.tanks()))))));
    }
  }

  private static void fields(SheetForm sheet) {
    Fields<Lease, Berm> berm =
        sheet.form.on("berm", PLACE.as(Optional::orElseThrow, Optional::of), Berm.class);
    berm.amount("length", "Length inside", "East to west.");
    berm.amount("width", "Width inside", "South to north.");
    berm.amount("height", "Height as built", "Held against what is needed.")
        .assumedFrom(l -> "not built");
    berm.amount("rain", "Rain to hold", "The storm your rule names; a local matter.")
        .unit(Unit.INCH, Unit.MILLIMETRE)
        .assumed("0 in");
    berm.amount("freeboard", "Freeboard", "Added on top.").assumed("0 ft");
    berm.amount(
            "largestTankFactor",
            "Times the largest tank",
            "1 by the federal rule; some states want 1.5. Local rules decide.")
        .unit(Unit.ONE, Unit.ONE)
        .assumed("1");
  }

  private static Berm around(List<Tank> tanks) {
    DoubleSummaryStatistics east = range(tanks, t -> t.at().east().toFeet());
    DoubleSummaryStatistics north = range(tanks, t -> t.at().north().toFeet());
    boolean none = tanks.isEmpty();
    double left = none ? 0 : east.getMin();
    double low = none ? 0 : north.getMin();
    return new Berm(
        MapPoint.ofFeet(Math.floor(left), Math.floor(low)),
        Length.ofFeet(none ? 2 * WALKWAY_FT : Math.ceil(east.getMax() - left)),
        Length.ofFeet(none ? 2 * WALKWAY_FT : Math.ceil(north.getMax() - low)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** From the outer edge of the first tank's walkway to that of the last. */
  private static DoubleSummaryStatistics range(List<Tank> tanks, ToDoubleFunction<Tank> place) {
    return tanks.stream()
        .flatMap(
            t -> {
              double reach = t.diameter().toFeet() / 2 + WALKWAY_FT;
              double at = place.applyAsDouble(t);
              return List.of(at - reach, at + reach).stream();
            })
        .collect(Collectors.summarizingDouble(x -> x));
  }
}
