package tankyard.engine.takeoff;

import java.util.stream.Stream;
import tankyard.engine.lease.Berm;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Thing;
import tankyard.engine.study.BermResult;
import tankyard.engine.study.Outlines;
import tankyard.engine.terrain.Outline;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;

/** Dirt in the berm and gravel on the pad. */
final class PadAndBermRule implements TakeoffRule {
  private static final Length EMPTY_HEIGHT = Length.ofFeet(2);
  private static final double GRAVEL_FT = 4.0 / 12;
  private static final double CUBIC_FEET_PER_YARD = 27;

  @Override
  public String words() {
    return "Dirt for a berm 2 ft wide on top with sides of 1 1/2 to 1, as high as it is drawn, else"
        + " as its tanks ask for, or 2 ft round an empty pad; 4 in of gravel inside it";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    drawing.staying(drawing.lease().berms()).forEach(berm -> count(drawing, tally, berm));
  }

  private static void count(Drawing drawing, Tally tally, Berm berm) {
    Stock stock = drawing.stock();
    Status status = berm.status();
    Outline outline = Outlines.of(berm);
    String[] causes = causes(drawing, berm);
    Ware dirt = stock.work("berm-dirt", "Dirt for the berm", Quote.Basis.CUBIC_YARD);
    tally.add(TakeoffKind.PAD_AND_BERM, dirt, dirtYards(drawing.lease(), berm), status, causes);
    Ware gravel = stock.sundry("pad-gravel", "Gravel on the pad", Quote.Basis.CUBIC_YARD);
    double area = Unit.SQUARE_FOOT.fromSi(outline.areaM2());
    double yards = area * GRAVEL_FT / CUBIC_FEET_PER_YARD;
    tally.addWith(TakeoffKind.PAD_AND_BERM, gravel, yards, status, causes);
  }

  /** As high as it is drawn, else as the tanks inside it ask for. */
  static double dirtYards(Lease lease, Berm berm) {
    return BermResult.of(lease, berm)
        .map(BermResult::dirt)
        .orElseGet(() -> BermResult.dirt(berm, berm.height().orElse(EMPTY_HEIGHT)))
        .value()
        .in(Unit.CUBIC_YARD);
  }

  /** It is there for the tanks and vessels inside. */
  private static String[] causes(Drawing drawing, Berm berm) {
    return Stream.concat(
            Stream.of(berm.id()),
            Stream.concat(drawing.lease().tanks().stream(), drawing.lease().vessels())
                .filter(t -> t.status().stays() && Outlines.holds(berm, t.at()))
                .map(Thing::id))
        .toArray(String[]::new);
  }
}
