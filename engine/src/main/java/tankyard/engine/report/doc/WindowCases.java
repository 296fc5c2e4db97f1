package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.study.CaseResult;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Rounding;
import tankyard.engine.window.Window;

/** Both ends of a window, case beside case, summer and winter among them. */
final class WindowCases {
  private static final String NONE = "-";

  private final Draft draft;
  private final Window window;

  /** One end of the window. */
  private enum End {
    LEAST("least", Rounding.UP),
    MOST("most", Rounding.DOWN);

    private final String words;
    private final Rounding side;

    End(String words, Rounding side) {
      this.words = words;
      this.side = side;
    }

    private Optional<Pressure> of(Window.InCase inCase) {
      return this == LEAST ? inCase.least() : inCase.most();
    }
  }

  private WindowCases(Draft draft, Window window) {
    this.draft = draft;
    this.window = window;
  }

  /** Nothing new where there is one case, or no end. */
  static List<Block> of(Draft draft, Window window) {
    List<End> ends = new ArrayList<>();
    window.least().ifPresent(l -> ends.add(End.LEAST));
    window.most().ifPresent(m -> ends.add(End.MOST));
    if (window.byCase().size() < 2 || ends.isEmpty()) {
      return List.of();
    }
    WindowCases cases = new WindowCases(draft, window);
    return new CaseTable<>(draft, ends)
        .before(text(""), end -> end.words)
        .with(draft.head("Each case for itself, gauge", Figure.READING), cases::cell);
  }

  private String cell(End end, CaseResult designCase) {
    return window.byCase().stream()
        .filter(c -> c.caseId().equals(designCase.designCase().id()))
        .findFirst()
        .flatMap(end::of)
        .map(p -> Figure.READING.digits(p.si(), draft.units(), end.side))
        .orElse(NONE);
  }
}
