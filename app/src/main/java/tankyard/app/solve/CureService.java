package tankyard.app.solve;

import java.util.List;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import tankyard.app.edit.LeaseStore;
import tankyard.engine.cures.CureBook;
import tankyard.engine.lease.Lease;

/**
 * Works out what would help, but only when asked: it takes as long as a dozen answers. The next
 * edit of the lease calls it off and forgets what it found.
 */
public final class CureService {
  /** How far it is. */
  public enum State {
    NOT_ASKED,
    WORKING,
    SHOWN,
    FAILED
  }

  private final LeaseStore store;
  private final CureSolver solver;
  private final LatestJob job;
  private final ReadOnlyObjectWrapper<State> state =
      new ReadOnlyObjectWrapper<>(this, "state", State.NOT_ASKED);
  private final ReadOnlyObjectWrapper<List<CureBook>> books =
      new ReadOnlyObjectWrapper<>(this, "books", List.of());
  private final ReadOnlyStringWrapper failure = new ReadOnlyStringWrapper(this, "failure", "");

  /**
   * A service that waits to be asked.
   *
   * @param background runs a job later, off the window's thread
   * @param window runs a job on the window's thread
   */
  public CureService(LeaseStore store, CureSolver solver, Executor background, Executor window) {
    this.store = store;
    this.solver = solver;
    this.job = new LatestJob("What would help could not be worked out", background, window);
    store.leaseProperty().addListener((o, before, after) -> forget());
  }

  public ReadOnlyObjectProperty<State> stateProperty() {
    return state.getReadOnlyProperty();
  }

  /** What was found for the lease as it is; empty until then. */
  public ReadOnlyObjectProperty<List<CureBook>> booksProperty() {
    return books.getReadOnlyProperty();
  }

  /** Why it could not be worked out; empty where it could. */
  public ReadOnlyStringProperty failureProperty() {
    return failure.getReadOnlyProperty();
  }

  /** Works it out for the lease as it is. */
  public void ask() {
    forget();
    state.set(State.WORKING);
    Lease lease = store.lease();
    job.start(cancel -> solver.cures(lease, cancel), this::show, this::fail);
  }

  private void show(List<CureBook> found) {
    books.set(found);
    state.set(State.SHOWN);
  }

  private void fail(String words) {
    failure.set(words);
    state.set(State.FAILED);
  }

  private void forget() {
    job.overtake();
    books.set(List.of());
    failure.set("");
    state.set(State.NOT_ASKED);
  }
}
