package tankyard.app.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tankyard.app.edit.LeaseStore;
import tankyard.app.edit.Rename;
import tankyard.app.example.NoAnswer;
import tankyard.app.example.SmallLease;

class SolveServiceTest {
  private static final Logger LOG = Logger.getLogger(LatestJob.class.getName());

  @BeforeAll
  static void the_log_of_a_failure_that_is_meant_stays_out_of_the_build() {
    LOG.setLevel(Level.OFF);
  }

  @AfterAll
  static void the_log_speaks_again() {
    LOG.setLevel(null);
  }

  private final LeaseStore store = new LeaseStore(SmallLease.lease());
  private final Queue<Runnable> waiting = new ArrayDeque<>();
  private final List<String> solved = new ArrayList<>();
  private final LeaseSolver solver =
      (lease, cancelled) -> {
        solved.add(lease.wells().get(0).name());
        return NoAnswer.of(lease);
      };

  private SolveService service(LeaseSolver by) {
    return new SolveService(store, by, waiting::add, Runnable::run);
  }

  private void runWaiting() {
    while (!waiting.isEmpty()) {
      waiting.remove().run();
    }
  }

  @Test
  void a_burst_of_edits_costs_one_working_out() {
    SolveService service = service(solver);
    store.edit(new Rename("W1", "a"));
    store.edit(new Rename("W1", "b"));
    store.edit(new Rename("W1", "c"));
    assertThat(service.freshness()).isEqualTo(Freshness.SOLVING);
    runWaiting();
    assertThat(solved).containsExactly("c");
    assertThat(service.freshness()).isEqualTo(Freshness.CURRENT);
    assertThat(service.latest().orElseThrow().revision()).isEqualTo(store.revision());
  }

  @Test
  void an_answer_overtaken_while_it_was_worked_out_is_dropped() {
    SolveService[] box = new SolveService[1];
    List<Boolean> told = new ArrayList<>();
    box[0] =
        service(
            (lease, cancelled) -> {
              if (lease.wells().get(0).name().equals("Well 1")) {
                store.edit(new Rename("W1", "late"));
                told.add(cancelled.isWanted());
              }
              return NoAnswer.of(lease);
            });
    waiting.remove().run();
    assertThat(told).containsExactly(true);
    assertThat(box[0].latest()).isEmpty();
    assertThat(box[0].freshness()).isEqualTo(Freshness.SOLVING);
    runWaiting();
    assertThat(box[0].latest().orElseThrow().answer().lease()).isSameAs(store.lease());
  }

  @Test
  void a_failure_is_told_and_the_next_edit_mends_it() {
    SolveService service =
        service(
            (lease, cancelled) -> {
              if (lease.wells().get(0).name().equals("bad")) {
                throw new IllegalStateException("no way to a separator");
              }
              return NoAnswer.of(lease);
            });
    store.edit(new Rename("W1", "bad"));
    runWaiting();
    assertThat(service.freshness()).isEqualTo(Freshness.FAILED);
    assertThat(service.failureProperty().get()).isEqualTo("no way to a separator");
    store.undo();
    runWaiting();
    assertThat(service.freshness()).isEqualTo(Freshness.CURRENT);
    assertThat(service.failureProperty().get()).isEmpty();
  }

  @Test
  void with_live_off_edits_only_mark_results_stale() {
    SolveService service = service(solver);
    runWaiting();
    service.liveProperty().set(false);
    store.edit(new Rename("W1", "a"));
    runWaiting();
    assertThat(service.freshness()).isEqualTo(Freshness.STALE);
    assertThat(solved).hasSize(1);
    service.solve();
    runWaiting();
    assertThat(solved).containsExactly("Well 1", "a");
    assertThat(service.freshness()).isEqualTo(Freshness.CURRENT);
  }
}
