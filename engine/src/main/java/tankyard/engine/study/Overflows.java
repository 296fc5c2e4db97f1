package tankyard.engine.study;

import java.util.List;
import tankyard.engine.lease.Service;
import tankyard.engine.tanks.Overflow;
import tankyard.engine.units.LiquidRate;

/**
 * What each overflow passes against all the fluid, since a stuck dump valve sends everything over
 * with the oil. The self-venting limit is taken: an overflow's slope is not drawn.
 */
final class Overflows {
  private Overflows() {}

  static List<OverflowResult> of(CaseStudy study) {
    LiquidRate all = study.allFluid();
    return study.survey().laid().values().stream()
        .filter(l -> l.line().service() == Service.OVERFLOW)
        .map(l -> new OverflowResult(l.id(), new Overflow(l.pipe().bore()).selfVenting(), all))
        .toList();
  }
}
