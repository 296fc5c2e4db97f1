package tankyard.engine.checks.tanks;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.NotTyped;
import tankyard.engine.checks.Several;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Tank;

/** Tanks whose vent nobody typed: what their roofs feel is not known. */
public final class VentUnknownCheck implements Check {
  @Override
  public String id() {
    return "vent-not-typed";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    List<Tank> unknown =
        evidence.lease().tanks().stream()
            .filter(tank -> tank.status().stays() && tank.ventBore().isEmpty())
            .toList();
    return unknown.isEmpty() || evidence.cases().isEmpty() ? List.of() : List.of(finding(unknown));
  }

  private Finding finding(List<Tank> unknown) {
    return Finding.of(
            id(),
            Severity.NOTE,
            unknown.get(0).id(),
            "What the roof feels while the tank fills and the truck draws is not checked for "
                + Several.named(unknown.stream().map(Tank::name).toList())
                + ": nobody typed the vent. Ounces fold a tank.",
            NotTyped.SOURCE)
        .mendedBy(
            "Type each vent's clear bore and what it lifts at; its sheet says what is enough.");
  }
}
