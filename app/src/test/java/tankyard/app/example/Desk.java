package tankyard.app.example;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import tankyard.app.edit.LeaseStore;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ViewSettings;
import tankyard.app.solve.CureService;
import tankyard.app.solve.SolveService;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.lease.Lease;
import tankyard.engine.working.Working;

/** What a panel is wired to, with results at once and in the same thread. */
public final class Desk {
  public final LeaseStore store;
  public final Selection selection;
  public final ViewSettings view;
  public final SolveService solve;
  public final CureService cures;
  public final List<Working> shown = new ArrayList<>();

  public Desk() {
    this(SmallLease.lease(), SmallAnswer::of);
  }

  public Desk(Lease lease, Function<Lease, LeaseAnswer> solver) {
    store = new LeaseStore(lease);
    selection = new Selection(store);
    view = new ViewSettings(store);
    solve =
        new SolveService(store, (l, cancelled) -> solver.apply(l), Runnable::run, Runnable::run);
    cures =
        new CureService(store, (l, cancelled) -> SmallCures.books(), Runnable::run, Runnable::run);
  }
}
