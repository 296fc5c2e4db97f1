package tankyard.app.figures;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.study.CaseResult;
import tankyard.engine.units.UnitSystem;

/**
 * The cases of an answer as columns.
 *
 * @param current id of the case looked at in the rest of the window
 */
public record CaseFigures(LeaseAnswer answer, String current, UnitSystem units) {
  public CaseFigures {
    Objects.requireNonNull(answer, "answer");
  }

  public List<FigureColumn> columns() {
    return answer.cases().stream()
        .map(CaseResult::designCase)
        .map(c -> new FigureColumn(c.name(), c.id().equals(current)))
        .toList();
  }

  /** Rows about one result of each case, where the case has it. */
  public <C> FigureRows<C> rows(Function<CaseResult, Optional<C>> part) {
    return new FigureRows<>(units, answer.cases().stream().map(part).toList());
  }
}
