package tankyard.app.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tankyard.engine.api.Cancel;

class LatestJobTest {
  private static final Logger LOG = Logger.getLogger(LatestJob.class.getName());

  @BeforeAll
  static void theLogOfAFailureThatIsMeantStaysOutOfTheBuild() {
    LOG.setLevel(Level.OFF);
  }

  @AfterAll
  static void theLogSpeaksAgain() {
    LOG.setLevel(null);
  }

  private final Deque<Runnable> background = new ArrayDeque<>();
  private final List<String> shown = new ArrayList<>();
  private final List<String> failed = new ArrayList<>();
  private final LatestJob job =
      new LatestJob("The test could not be done", background::add, Runnable::run);

  private void start(String answer) {
    job.start(cancel -> answer, shown::add, failed::add);
  }

  @Test
  void showsWhatWasWorkedOut() {
    start("17 psi");
    background.remove().run();

    assertThat(shown).containsExactly("17 psi");
  }

  @Test
  void theNextStartOvertakesWhatHasNotRunYet() {
    start("old");
    start("new");
    background.remove().run();
    background.remove().run();

    assertThat(shown).containsExactly("new");
  }

  @Test
  void whatIsUnderWayIsToldThatItIsCalledOff() {
    List<Boolean> seen = new ArrayList<>();
    job.start(
        (Cancel cancel) -> {
          seen.add(cancel.isWanted());
          job.overtake();
          seen.add(cancel.isWanted());
          return "late";
        },
        shown::add,
        failed::add);
    background.remove().run();

    assertThat(seen).containsExactly(false, true);
    assertThat(shown).isEmpty();
  }

  @Test
  void aFailureSaysWhatItIsEvenWithoutWordsOfItsOwn() {
    job.<String>start(
        cancel -> {
          throw new IllegalStateException();
        },
        shown::add,
        failed::add);
    background.remove().run();

    assertThat(failed).containsExactly("java.lang.IllegalStateException");
  }
}
