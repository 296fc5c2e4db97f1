package tankyard.engine.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.engine.catalog.SeparatorSize;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.SeparatorBuilder;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Length;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.vessels.Retention;
import tankyard.engine.vessels.Settling;
import tankyard.engine.working.Computed;

/**
 * Tries every size of the catalogue in place of a drawn separator, against the retention guide and
 * the drops that are usually asked for, in every case.
 */
public final class SeparatorChoices {
  private static final int AFTER_THE_PICK = 2;

  private SeparatorChoices() {}

  /** One for each separator, where the catalogue has any of its shape and something comes in. */
  public static List<SeparatorChoice> of(List<CaseStudy> studies) {
    if (studies.isEmpty()) {
      return List.of();
    }
    Survey survey = studies.get(0).survey();
    List<SeparatorSize> sizes = survey.catalog().list(SeparatorSize.class);
    return survey.separators().stream()
        .map(separator -> choice(studies, separator, sizes))
        .filter(choice -> !choice.candidates().isEmpty())
        .toList();
  }

  private static SeparatorChoice choice(
      List<CaseStudy> studies, Separator separator, List<SeparatorSize> sizes) {
    List<SeparatorChoice.Candidate> all =
        sizes.stream()
            .filter(size -> size.shape() == separator.shape())
            .sorted(Comparator.comparingDouble(SeparatorSize::order))
            .flatMap(size -> candidate(studies, separator, size).stream())
            .toList();
    return new SeparatorChoice(separator.id(), aroundThePick(all));
  }

  private static List<SeparatorChoice.Candidate> aroundThePick(
      List<SeparatorChoice.Candidate> all) {
    int pick = 0;
    while (pick < all.size() && !all.get(pick).enough()) {
      pick++;
    }
    int from = Math.max(0, pick - 1);
    return all.subList(from, Math.min(all.size(), pick + 1 + AFTER_THE_PICK));
  }

  /** Something asked of a size in a case. */
  private record Asked(
      double ratio, String words, CaseStudy study, Computed<? extends Quantity> by) {}

  private static Optional<SeparatorChoice.Candidate> candidate(
      List<CaseStudy> studies, Separator separator, SeparatorSize size) {
    Separator tried =
        SeparatorBuilder.builder(separator)
            .diameter(size.diameter())
            .length(size.length())
            .bottomHeight(Optional.empty())
            .build();
    return studies.stream()
        .flatMap(study -> asked(study, SeparatorTimes.layers(study, tried)))
        .max(Comparator.comparingDouble(Asked::ratio))
        .map(
            most ->
                new SeparatorChoice.Candidate(
                    size.id(),
                    size.name(),
                    most.ratio() <= 1,
                    most.words(),
                    most.study().designCase().id(),
                    most.by()));
  }

  private static Stream<Asked> asked(CaseStudy study, SeparatorTimes.Layers layers) {
    double least = Retention.Guide.of(study.lease().fluids().oil(), study.ground()).lowest();
    List<Asked> asked = new ArrayList<>();
    layers.oilMinutes().ifPresent(t -> asked.add(minutes(study, "oil", t, least)));
    layers.waterMinutes().ifPresent(t -> asked.add(minutes(study, "water", t, least)));
    layers.drops().water().ifPresent(d -> asked.add(drop(study, "water", d, Settling.WATER_ASKED)));
    layers.drops().oil().ifPresent(d -> asked.add(drop(study, "oil", d, Settling.OIL_ASKED)));
    return asked.stream();
  }

  private static Asked minutes(CaseStudy study, String liquid, Computed<Time> stays, double least) {
    return new Asked(
        least / stays.value().toMinutes(),
        liquid
            + " stays "
            + Figures.significant(stays.value().toMinutes(), 3)
            + " min of "
            + Figures.exact(least),
        study,
        stays);
  }

  private static Asked drop(CaseStudy study, String liquid, Computed<Length> drop, Length asked) {
    return new Asked(
        drop.value().metres() / asked.metres(),
        liquid
            + " drops from "
            + Figures.significant(drop.value().in(Unit.MILLIMETRE), 2)
            + " mm, asked "
            + Figures.exact(asked.in(Unit.MILLIMETRE)),
        study,
        drop);
  }
}
