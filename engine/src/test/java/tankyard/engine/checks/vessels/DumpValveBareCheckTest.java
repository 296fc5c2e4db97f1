package tankyard.engine.checks.vessels;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;

/** What is piped round the dump valve, said where it lacks. */
class DumpValveBareCheckTest {
  private static final String AROUND = "/separators/0/dumpValve/around";
  private static final Looked P1 = Looked.at("p1-osage-bend");
  private static final Looked BOTH = P1.with(AROUND, "strainer-and-bypass");

  @Test
  void whatIsMissingIsSaid() {
    assertThat(P1.the("dump-valve-bare").severity()).isEqualTo(Severity.NOTE);
    assertThat(P1.the("dump-valve-bare").words()).contains("no strainer ahead and no bypass");
    assertThat(P1.with(AROUND, "strainer").the("dump-valve-bare").words())
        .contains("no bypass round it");
    assertThat(P1.with(AROUND, "bypass").the("dump-valve-bare").words())
        .contains("no strainer ahead");
    assertThat(BOTH.says("dump-valve-bare")).isFalse();
  }
}
