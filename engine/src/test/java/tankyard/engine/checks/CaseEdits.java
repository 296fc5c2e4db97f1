package tankyard.engine.checks;

import java.util.function.UnaryOperator;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.GunBarrelResult;
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
    return c.withStorage(change.apply(c.storage()));
  }

  public static CaseResult lines(CaseResult c, UnaryOperator<LineResult> change) {
    return c.withLines(c.lines().stream().map(change).toList());
  }

  public static CaseResult separators(CaseResult c, UnaryOperator<SeparatorResult> change) {
    return c.withSeparators(c.separators().stream().map(change).toList());
  }

  public static CaseResult gunBarrels(CaseResult c, UnaryOperator<GunBarrelResult> change) {
    return c.withGunBarrels(c.gunBarrels().stream().map(change).toList());
  }

  public static CaseResult overflows(CaseResult c, UnaryOperator<OverflowResult> change) {
    return c.withOverflows(c.overflows().stream().map(change).toList());
  }

  public static CaseResult injections(CaseResult c, UnaryOperator<InjectionResult> change) {
    return c.withInjections(c.injections().stream().map(change).toList());
  }

  /** A line at another speed. */
  public static LineResult atSpeed(LineResult line, double feetPerSecond) {
    return line.withVelocityFtPerS(feetPerSecond);
  }
}
