package tankyard.app.sheet;

import java.util.List;
import java.util.function.UnaryOperator;
import tankyard.app.edit.EditRefusedException;
import tankyard.app.edit.LeaseStore;
import tankyard.app.edit.ViewSettings;
import tankyard.app.field.FormHost;
import tankyard.engine.lease.Lease;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.leasefile.Problem;
import tankyard.engine.units.UnitSystem;

/** Takes the sheet's changes into the store, and refuses what could never be saved. */
final class LeaseHost implements FormHost<Lease> {
  private final LeaseStore store;
  private final ViewSettings view;

  LeaseHost(LeaseStore store, ViewSettings view) {
    this.store = store;
    this.view = view;
  }

  @Override
  public void change(String name, String mergeKey, UnaryOperator<Lease> change) {
    Lease before = store.lease();
    Lease after = change.apply(before);
    if (after.equals(before)) {
      return;
    }
    refuseNewProblems(before, after);
    try {
      store.edit(new FieldEdit("Change " + name, mergeKey, change));
    } catch (EditRefusedException refused) {
      throw new IllegalArgumentException(refused.getMessage(), refused);
    }
  }

  @Override
  public UnitSystem units() {
    return view.units();
  }

  /** A lease that has problems already may be mended one field at a time. */
  private static void refuseNewProblems(Lease before, Lease after) {
    List<Problem> now = LeaseFiles.problems("", after);
    if (now.isEmpty()) {
      return;
    }
    List<String> known = LeaseFiles.problems("", before).stream().map(LeaseHost::key).toList();
    now.stream()
        .filter(p -> !known.contains(key(p)))
        .findFirst()
        .ifPresent(
            p -> {
              throw new IllegalArgumentException(words(p));
            });
  }

  private static String key(Problem problem) {
    return problem.place() + " " + problem.found();
  }

  private static String words(Problem problem) {
    return capitalised(problem.found()) + " can't be. Accepted: " + problem.accepted() + ".";
  }

  private static String capitalised(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
