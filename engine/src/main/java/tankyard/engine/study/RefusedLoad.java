package tankyard.engine.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * How long the oil tanks last after a purchaser refused a load. Of several tanks the largest stands
 * full and shut in until it is treated, and the others are empty; a single tank goes on filling on
 * top of the load.
 */
final class RefusedLoad {
  private static final Source SOURCE =
      Source.commonPractice("a refused load keeps its tank until it is treated or taken");

  private RefusedLoad() {}

  /**
   * Days until every tank is full.
   *
   * @param usable of each oil tank
   * @param all of them together
   * @param oil above zero
   */
  static Computed<Time> lasts(
      List<Computed<Volume>> usable, Computed<Volume> all, Volume load, LiquidRate oil) {
    Optional<Volume> largest =
        usable.size() < 2
            ? Optional.empty()
            : usable.stream()
                .map(Computed::value)
                .max(Comparator.comparingDouble(Volume::toBarrels));
    Volume held = largest.orElse(load);
    double room = Math.max(0, all.value().toBarrels() - held.toBarrels());
    return Computed.of(
        Time.ofDays(room / oil.toBarrelsPerDay()),
        () ->
            Working.of(
                    "Days until full after a refused load",
                    "t",
                    "max(V-H,0)/Qo",
                    Unit.DAY_UNIT,
                    SOURCE,
                    Term.of("V", "usable oil storage", all.value(), Unit.BARREL),
                    Term.of(
                        "H",
                        largest.isPresent() ? "the largest tank, shut in" : "the load, left in",
                        held,
                        Unit.BARREL),
                    Term.of("Qo", "oil a day", oil, Unit.BARREL_PER_DAY))
                .from(List.of(all.working())));
  }
}
