package tankyard.engine.checks.vessels;

import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.Site;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.Defaults;
import tankyard.engine.study.SeparatorResult;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.vessels.Retention;
import tankyard.engine.working.Computed;

/**
 * A separator holds its oil or its water for less time than the guide asks for at the oil's
 * gravity. Liquids are taken to come in as cold as the ground.
 */
public final class RetentionCheck implements Check {

  @Override
  public String id() {
    return "retention-short";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      Temperature cold = liquids(evidence.lease().site(), result.designCase());
      Retention.Guide guide = Retention.Guide.of(evidence.lease().fluids().oil(), cold);
      for (SeparatorResult separator : result.separators()) {
        shorter(separator)
            .filter(layer -> layer.time().value().toMinutes() < guide.lowest())
            .ifPresent(
                layer ->
                    worst.add(
                        separator.separatorId(),
                        guide.lowest() / layer.time().value().toMinutes(),
                        () -> finding(evidence, result, separator, layer, guide)));
      }
    }
    return worst.findings();
  }

  private record Layer(String name, Computed<Time> time) {}

  private static Optional<Layer> shorter(SeparatorResult separator) {
    Optional<Layer> oil = separator.oilMinutes().map(t -> new Layer("oil", t));
    Optional<Layer> water = separator.waterMinutes().map(t -> new Layer("water", t));
    if (oil.isEmpty() || water.isEmpty()) {
      return oil.or(() -> water);
    }
    boolean oilShorter = oil.get().time().value().seconds() < water.get().time().value().seconds();
    return oilShorter ? oil : water;
  }

  private static Temperature liquids(Site site, DesignCase designCase) {
    return designCase.season() == DesignCase.Season.WINTER
        ? site.groundWinter().orElse(Defaults.GROUND_WINTER)
        : site.groundSummer().orElse(Defaults.GROUND_SUMMER);
  }

  private Finding finding(
      Evidence evidence,
      CaseResult result,
      SeparatorResult separator,
      Layer layer,
      Retention.Guide guide) {
    Versus minutes = Versus.of(layer.time().value().toMinutes(), guide.lowest(), Unit.MINUTE, 1);
    String cold = guide.cautions().isEmpty() ? "" : " " + guide.cautions().get(0).words();
    return Finding.of(
            id(),
            Severity.LOOK,
            separator.separatorId(),
            evidence.nameOf(separator.separatorId())
                + " holds its "
                + layer.name()
                + " for "
                + minutes.value()
                + "; the guide for this oil asks for "
                + Figures.exact(guide.lowest())
                + " to "
                + Figures.exact(guide.highest())
                + " min."
                + cold,
            Retention.Guide.SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(
            "Stagger the wells' timers, so that fewer run at once.",
            "Move the interface towards the layer that has time to spare.",
            "A bigger separator, a second one beside it, or heat.")
        .shownBy(layer.time().working());
  }
}
