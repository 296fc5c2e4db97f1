package tankyard.engine.study;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import tankyard.engine.catalog.Price;
import tankyard.engine.catalog.PriceList;
import tankyard.engine.catalog.SeparatorSize;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.SeparatorBuilder;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
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

  /** More share a header badly; common practice, no source. */
  private static final int MOST_SIDE_BY_SIDE = 4;

  private final List<CaseStudy> studies;
  private final PriceList prices;

  private SeparatorChoices(List<CaseStudy> studies, PriceList prices) {
    this.studies = studies;
    this.prices = prices;
  }

  /** One for each separator, where the catalogue has any of its shape and something comes in. */
  public static List<SeparatorChoice> of(List<CaseStudy> studies, PriceList prices) {
    if (studies.isEmpty()) {
      return List.of();
    }
    Survey survey = studies.get(0).survey();
    List<SeparatorSize> sizes = survey.catalog().list(SeparatorSize.class);
    SeparatorChoices choices = new SeparatorChoices(studies, prices);
    return survey.separators().stream()
        .map(separator -> choices.choice(separator, sizes))
        .filter(choice -> !choice.candidates().isEmpty())
        .toList();
  }

  /** What comes into each of several in a case: the same whatever their size. */
  private record Comes(CaseStudy study, LiquidRate oil, LiquidRate water) {
    static Comes into(Separator separator, int count, CaseStudy study) {
      return new Comes(
          study,
          CaseStudy.barrels(study.oilInto(separator) / count),
          CaseStudy.barrels(study.waterInto(separator) / count));
    }
  }

  private SeparatorChoice choice(Separator separator, List<SeparatorSize> sizes) {
    List<SeparatorSize> bySize =
        sizes.stream()
            .filter(size -> size.shape() == separator.shape())
            .sorted(Comparator.comparingDouble(SeparatorSize::order))
            .toList();
    List<SeparatorChoice.Candidate> around = aroundThePick(tried(separator, bySize, 1).iterator());
    for (int count = 2; count <= MOST_SIDE_BY_SIDE && isShort(around); count++) {
      tried(separator, bySize, count)
          .filter(SeparatorChoice.Candidate::enough)
          .findFirst()
          .ifPresent(around::add);
    }
    return new SeparatorChoice(separator.id(), around);
  }

  private static boolean isShort(List<SeparatorChoice.Candidate> around) {
    return !around.isEmpty() && around.stream().noneMatch(SeparatorChoice.Candidate::enough);
  }

  private Stream<SeparatorChoice.Candidate> tried(
      Separator separator, List<SeparatorSize> bySize, int count) {
    List<Comes> comes = studies.stream().map(s -> Comes.into(separator, count, s)).toList();
    return bySize.stream()
        .map(size -> candidate(comes, separator, size, count))
        .flatMap(Optional::stream);
  }

  /** Larger ones than are told are not even tried. */
  private static List<SeparatorChoice.Candidate> aroundThePick(
      Iterator<SeparatorChoice.Candidate> bySize) {
    List<SeparatorChoice.Candidate> around = new ArrayList<>();
    int toCome = AFTER_THE_PICK;
    boolean picked = false;
    while (bySize.hasNext() && (!picked || toCome > 0)) {
      SeparatorChoice.Candidate next = bySize.next();
      if (picked) {
        toCome--;
      } else {
        around.subList(0, Math.max(0, around.size() - 1)).clear();
        picked = next.enough();
      }
      around.add(next);
    }
    return around;
  }

  /** Something asked of a size in a case, put in words only where it binds. */
  private record Asked(
      double ratio, Supplier<String> words, CaseStudy study, Computed<? extends Quantity> by) {}

  private Optional<SeparatorChoice.Candidate> candidate(
      List<Comes> comes, Separator separator, SeparatorSize size, int count) {
    Separator tried =
        SeparatorBuilder.builder(separator)
            .diameter(size.diameter())
            .length(size.length())
            .bottomHeight(Optional.empty())
            .build();
    return comes.stream()
        .flatMap(c -> asked(c.study(), SeparatorTimes.layers(c.study(), tried, c.oil(), c.water())))
        .max(Comparator.comparingDouble(Asked::ratio))
        .map(
            most ->
                new SeparatorChoice.Candidate(
                    size.id(),
                    size.name(),
                    count,
                    most.ratio() <= 1,
                    most.words().get(),
                    most.study().designCase().id(),
                    most.by(),
                    prices.price(size.id()).map(price -> cost(price, count))));
  }

  private static SeparatorChoice.Cost cost(Price price, int count) {
    return new SeparatorChoice.Cost(
        price.price().multiply(BigDecimal.valueOf(count)), price.currency());
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
        () ->
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
        () ->
            liquid
                + " drops from "
                + Figures.significant(drop.value().in(Unit.MILLIMETRE), 2)
                + " mm, asked "
                + Figures.exact(asked.in(Unit.MILLIMETRE)),
        study,
        drop);
  }
}
