package tankyard.app.solve;

import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import tankyard.app.edit.LeaseStore;
import tankyard.engine.api.Cancel;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.lease.Lease;

/**
 * Works the lease out anew after every edit, away from the window's thread, and drops what a later
 * edit has overtaken.
 */
public final class SolveService {
  private final LeaseStore store;
  private final LeaseSolver solver;
  private final LatestJob job;
  private final ReadOnlyObjectWrapper<Solved> latest = new ReadOnlyObjectWrapper<>(this, "latest");
  private final ReadOnlyObjectWrapper<Freshness> freshness =
      new ReadOnlyObjectWrapper<>(this, "freshness", Freshness.STALE);
  private final ReadOnlyStringWrapper failure = new ReadOnlyStringWrapper(this, "failure", "");
  private final BooleanProperty live = new SimpleBooleanProperty(this, "live", true);

  /**
   * A service that starts with the store's lease at once.
   *
   * @param background runs a job later, off the window's thread; the wait before a job starts is
   *     what lets a burst of edits cost one working-out
   * @param window runs a job on the window's thread
   */
  public SolveService(LeaseStore store, LeaseSolver solver, Executor background, Executor window) {
    this.store = store;
    this.solver = solver;
    this.job = new LatestJob("The lease could not be worked out", background, window);
    store.leaseProperty().addListener((o, before, after) -> leaseChanged());
    live.addListener((o, was, is) -> leaseChanged());
    solve();
  }

  /** The latest answer, which may be of an earlier lease: see {@link #freshnessProperty()}. */
  public Optional<Solved> latest() {
    return Optional.ofNullable(latest.get());
  }

  /** The latest answer; null before the first. */
  public ReadOnlyObjectProperty<Solved> latestProperty() {
    return latest.getReadOnlyProperty();
  }

  public Freshness freshness() {
    return freshness.get();
  }

  public ReadOnlyObjectProperty<Freshness> freshnessProperty() {
    return freshness.getReadOnlyProperty();
  }

  /** Why it could not be worked out; empty where it could. */
  public ReadOnlyStringProperty failureProperty() {
    return failure.getReadOnlyProperty();
  }

  /** Whether every edit is worked out by itself. */
  public BooleanProperty liveProperty() {
    return live;
  }

  /** Works the current lease out, live or not. */
  public void solve() {
    freshness.set(Freshness.SOLVING);
    Lease lease = store.lease();
    long revision = store.revision();
    job.start(cancel -> timed(lease, revision, cancel), this::show, this::fail);
  }

  /** Gives up what is under way. */
  public void stop() {
    job.overtake();
  }

  private void leaseChanged() {
    boolean known = latest.get() != null && latest.get().revision() == store.revision();
    if (live.get() && !known) {
      solve();
    } else {
      job.overtake();
      freshness.set(known ? Freshness.CURRENT : Freshness.STALE);
    }
  }

  private Solved timed(Lease lease, long revision, Cancel cancel) {
    long start = System.nanoTime();
    LeaseAnswer answer = solver.solve(lease, cancel);
    return new Solved(revision, answer, (System.nanoTime() - start) / 1_000_000);
  }

  private void show(Solved solved) {
    failure.set("");
    latest.set(solved);
    freshness.set(Freshness.CURRENT);
  }

  private void fail(String words) {
    failure.set(words);
    freshness.set(Freshness.FAILED);
  }
}
