package tankyard.engine.report.doc;

import java.util.List;

/** A part of a report with a heading. */
public record Section(String title, List<Block> blocks) {
  public Section {
    blocks = List.copyOf(blocks);
  }

  static Section of(String title, Block... blocks) {
    return new Section(title, List.of(blocks));
  }
}
