package tankyard.engine.checks;

import java.util.function.UnaryOperator;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.InjectionResult;
import tankyard.engine.study.LineResult;
import tankyard.engine.study.OverflowResult;
import tankyard.engine.study.SeparatorResult;
import tankyard.engine.study.StorageResult;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** A case's result with one part of it put in by hand. */
public final class CaseEdits {
  private CaseEdits() {}

  /** A number as if it had been worked out. */
  public static <Q extends Quantity> Computed<Q> computed(Q value) {
    Unit unit = value.typed().unit();
    return Computed.of(
        value,
        () ->
            Working.of(
                "put in by hand",
                "x",
                "t",
                unit,
                Source.definition("a test"),
                Term.of("t", "as put in", value, unit)));
  }

  public static CaseResult storage(CaseResult c, UnaryOperator<StorageResult> change) {
    return new CaseResult(
        c.designCase(),
        c.lines(),
        c.wells(),
        c.separators(),
        change.apply(c.storage()),
        c.overflows(),
        c.injections(),
        c.cautions());
  }

  public static CaseResult lines(CaseResult c, UnaryOperator<LineResult> change) {
    return new CaseResult(
        c.designCase(),
        c.lines().stream().map(change).toList(),
        c.wells(),
        c.separators(),
        c.storage(),
        c.overflows(),
        c.injections(),
        c.cautions());
  }

  public static CaseResult separators(CaseResult c, UnaryOperator<SeparatorResult> change) {
    return new CaseResult(
        c.designCase(),
        c.lines(),
        c.wells(),
        c.separators().stream().map(change).toList(),
        c.storage(),
        c.overflows(),
        c.injections(),
        c.cautions());
  }

  public static CaseResult overflows(CaseResult c, UnaryOperator<OverflowResult> change) {
    return new CaseResult(
        c.designCase(),
        c.lines(),
        c.wells(),
        c.separators(),
        c.storage(),
        c.overflows().stream().map(change).toList(),
        c.injections(),
        c.cautions());
  }

  public static CaseResult injections(CaseResult c, UnaryOperator<InjectionResult> change) {
    return new CaseResult(
        c.designCase(),
        c.lines(),
        c.wells(),
        c.separators(),
        c.storage(),
        c.overflows(),
        c.injections().stream().map(change).toList(),
        c.cautions());
  }

  /** A line at another speed. */
  public static LineResult atSpeed(LineResult line, double feetPerSecond) {
    return new LineResult(
        line.lineId(),
        line.service(),
        line.flow(),
        line.flowWords(),
        line.length(),
        line.lift(),
        line.friction(),
        line.start(),
        line.end(),
        feetPerSecond,
        line.reynolds(),
        line.regime(),
        line.crest(),
        line.rating(),
        line.contents(),
        line.points());
  }
}
