package tankyard.app.edit;

import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.Lease;
import tankyard.engine.units.UnitSystem;

/** How the lease is looked at, the same in every part of the window; no part of the document. */
public final class ViewSettings {
  private final ObjectProperty<UnitSystem> units =
      new SimpleObjectProperty<>(this, "units", UnitSystem.FIELD);
  private final StringProperty caseId = new SimpleStringProperty(this, "caseId", "");

  public ViewSettings(LeaseStore store) {
    store.leaseProperty().addListener((o, before, after) -> keepCaseIn(after));
    keepCaseIn(store.lease());
  }

  public UnitSystem units() {
    return units.get();
  }

  public ObjectProperty<UnitSystem> unitsProperty() {
    return units;
  }

  /** Id of the design case whose results are shown; empty where the lease has none. */
  public String caseId() {
    return caseId.get();
  }

  public StringProperty caseIdProperty() {
    return caseId;
  }

  private void keepCaseIn(Lease lease) {
    boolean there = lease.cases().stream().anyMatch(c -> c.id().equals(caseId.get()));
    if (!there) {
      Optional<DesignCase> first = lease.cases().stream().findFirst();
      caseId.set(first.map(DesignCase::id).orElse(""));
    }
  }
}
