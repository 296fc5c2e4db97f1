package tankyard.app.edit;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyLongProperty;
import javafx.beans.property.ReadOnlyLongWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.LeaseRules;

/** The open lease and its history. One thread only: the one that draws the window. */
public final class LeaseStore {
  private final ReadOnlyObjectWrapper<Lease> lease = new ReadOnlyObjectWrapper<>(this, "lease");
  private final ReadOnlyLongWrapper revision = new ReadOnlyLongWrapper(this, "revision");
  private final ReadOnlyLongWrapper document = new ReadOnlyLongWrapper(this, "document");
  private final ReadOnlyBooleanWrapper dirty = new ReadOnlyBooleanWrapper(this, "dirty");
  private final ReadOnlyStringWrapper undoName = new ReadOnlyStringWrapper(this, "undoName", "");
  private final ReadOnlyStringWrapper redoName = new ReadOnlyStringWrapper(this, "redoName", "");
  private final History history = new History();
  private final Function<Lease, Optional<String>> objection;
  private Lease saved;

  /** A store that only refuses what breaks the rules of a lease. */
  public LeaseStore(Lease first) {
    this(first, lease -> Optional.empty());
  }

  /**
   * A store that also refuses what somebody objects to, such as a value no file could hold.
   *
   * @param objection the reason, in words; asked for every edit but the steps of a drag
   */
  public LeaseStore(Lease first, Function<Lease, Optional<String>> objection) {
    this.objection = objection;
    lease.set(first);
    saved = first;
  }

  public Lease lease() {
    return lease.get();
  }

  public ReadOnlyObjectProperty<Lease> leaseProperty() {
    return lease.getReadOnlyProperty();
  }

  /** Counts up with every change, undo included; never the same number for two leases. */
  public long revision() {
    return revision.get();
  }

  public ReadOnlyLongProperty revisionProperty() {
    return revision.getReadOnlyProperty();
  }

  /** Counts up with every document that is opened, so that the map can bring it into view. */
  public ReadOnlyLongProperty documentProperty() {
    return document.getReadOnlyProperty();
  }

  /** Whether the lease differs from what was last opened or saved. */
  public boolean isDirty() {
    return dirty.get();
  }

  public ReadOnlyBooleanProperty dirtyProperty() {
    return dirty.getReadOnlyProperty();
  }

  /** Name of the step undo would take back; empty where there is none. */
  public ReadOnlyStringProperty undoNameProperty() {
    return undoName.getReadOnlyProperty();
  }

  public ReadOnlyStringProperty redoNameProperty() {
    return redoName.getReadOnlyProperty();
  }

  /**
   * Changes the lease. An edit that changes nothing leaves no step.
   *
   * @throws EditRefusedException with the reason, and nothing has changed
   */
  public void edit(Edit edit) {
    Lease base = history.base(edit, lease());
    Lease after = edit.apply(base);
    refuseIfBroken(after);
    if (edit.gesture().isEmpty()) {
      objection.apply(after).ifPresent(LeaseStore::refuse);
    }
    history.record(edit, base, after);
    show(after);
  }

  private static void refuseIfBroken(Lease after) {
    List<LeaseRules.Broken> broken = LeaseRules.broken(after);
    if (!broken.isEmpty()) {
      refuse(broken.get(0).words());
    }
  }

  private static void refuse(String words) {
    throw new EditRefusedException(words);
  }

  public void undo() {
    history.undo().ifPresent(this::show);
  }

  public void redo() {
    history.redo().ifPresent(this::show);
  }

  /** Takes another document, as read from a file: no step leads back to the one before. */
  public void open(Lease other) {
    history.clear();
    saved = other;
    show(other);
    document.set(document.get() + 1);
  }

  /** The same for a document that lies in no file yet, so that closing it must ask. */
  public void openUnsaved(Lease other) {
    open(other);
    saved = null;
    refresh();
  }

  /**
   * Says that this lease now lies in its file. It may be an older one than the current: a save
   * takes a moment, and the owner works on.
   */
  public void saved(Lease written) {
    saved = written;
    refresh();
  }

  private void show(Lease next) {
    if (!next.equals(lease.get())) {
      // The revision first: whoever hears of the new lease may ask for its revision.
      revision.set(revision.get() + 1);
      lease.set(next);
    }
    refresh();
  }

  private void refresh() {
    dirty.set(!lease.get().equals(saved));
    undoName.set(history.undoName());
    redoName.set(history.redoName());
  }
}
