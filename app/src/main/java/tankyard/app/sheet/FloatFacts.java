package tankyard.app.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.app.sheet.SheetResults.WorkedFact;
import tankyard.engine.report.doc.Figure;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.window.FloatWork;
import tankyard.engine.working.Computed;

/** What a separator's float weighs and pulls, today and when its water freshens. */
final class FloatFacts {
  private FloatFacts() {}

  static List<WorkedFact> of(FloatWork work, UnitSystem units) {
    List<WorkedFact> facts = new ArrayList<>();
    facts.add(
        new WorkedFact(
            "Weigh the ball to",
            Figure.SCALE.words(work.halfway().value(), units, Rounding.NEAREST),
            "Halfway between oil and brine it pulls alike both ways.",
            work.halfway()::working));
    facts.add(
        new WorkedFact(
            "Float pulls",
            Figure.PULL.words(work.opens().value(), units, Rounding.DOWN)
                + " to open, "
                + Figure.PULL.words(work.closes().value(), units, Rounding.DOWN)
                + " to close",
            "At the seat, friction taken off.",
            work.opens()::working));
    facts.add(gauge("Leg full, works to", work.legFull(), units));
    facts.add(gauge("Leg drained, to", work.legDrained(), units));
    Optional<FloatWork.Fresher> fresher = work.fresher();
    fresher.ifPresent(
        then ->
            facts.add(
                gauge("In " + AmountText.print(then.water().typed()), then.legFull(), units)));
    return facts;
  }

  private static WorkedFact gauge(String label, Computed<Pressure> most, UnitSystem units) {
    return new WorkedFact(
        label,
        Figure.READING.words(most.value(), units, Rounding.DOWN) + " on the gauge",
        "The most it can open or shut against.",
        most::working);
  }
}
