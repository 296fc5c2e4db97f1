package tankyard.engine.cures;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.api.Cancel;
import tankyard.engine.api.Tankyard;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.PriceList;
import tankyard.engine.designs.ExampleLease;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.LeaseBuilder;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.LineBuilder;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.SeparatorBuilder;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tee;

/** A leg two separators send through is not stretched at the rate of one of them. */
class SharedLegReachTest {
  private static final Tankyard TANKYARD =
      new Tankyard(Catalog.empty(), PriceList.empty(), LocalDate.of(2026, 5, 1));
  private static final Lease ONE = ExampleLease.of("p1-osage-bend");

  /** Wells 3 and 4 on a second separator beside the first, and one water leg from a tee on. */
  private static Lease two() {
    Separator first = ONE.separators().get(0);
    Separator second = SeparatorBuilder.builder(first).id("S2").name("Second").build();
    List<Line> lines = new ArrayList<>();
    for (Line line : ONE.lines()) {
      switch (line.id()) {
        case "FL-W3", "FL-W4" -> lines.add(ends(line, line.id(), line.from(), "S2"));
        case "OL1" -> {
          lines.add(line);
          lines.add(ends(line, "OL2", "S2", line.to()));
        }
        case "WL1" -> {
          lines.add(ends(line, "WLa", "S1", "T"));
          lines.add(ends(line, "WLb", "S2", "T"));
          lines.add(ends(line, "WL1", "T", line.to()));
        }
        default -> lines.add(line);
      }
    }
    return LeaseBuilder.builder(ONE)
        .separators(List.of(first, second))
        .tees(List.of(new Tee("T", "T", first.at(), first.ground(), Status.NEW)))
        .lines(lines)
        .build();
  }

  private static Line ends(Line line, String id, String from, String to) {
    return LineBuilder.builder(line).id(id).from(from).to(to).build();
  }

  @Test
  void itIsLeftOutAndSaidWhy() {
    List<CureBook> books = TANKYARD.cures(two(), Cancel.NEVER);
    assertThat(books).hasSize(2);
    for (CureBook book : books) {
      assertThat(book.reaches()).isEmpty();
      assertThat(book.others())
          .filteredOn(w -> w.startsWith("How far Water tank can go is left out: Water leg carries"))
          .hasSize(1);
      assertThat(book.levels()).isPresent();
      assertThat(book.others())
          .filteredOn(w -> w.startsWith("A transfer pump"))
          .allMatch(w -> w.contains("bbl/d while the other separators send theirs, "));
    }
  }

  @Test
  void aLegOfItsOwnIsToldAsBefore() {
    CureBook book = TANKYARD.cures(ONE, Cancel.NEVER).get(0);
    assertThat(book.reaches()).isNotEmpty();
    assertThat(book.others()).noneMatch(w -> w.contains("left out"));
  }
}
