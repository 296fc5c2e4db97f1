package tankyard.engine.api;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.CatalogSource;
import tankyard.engine.catalog.PriceList;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.all.AllChecks;
import tankyard.engine.cures.CureBook;
import tankyard.engine.cures.CureFinder;
import tankyard.engine.cures.Trial;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.Lease;
import tankyard.engine.outlook.Outlook;
import tankyard.engine.pricing.Bill;
import tankyard.engine.pricing.Pricing;
import tankyard.engine.study.Assumption;
import tankyard.engine.study.Assumptions;
import tankyard.engine.study.CaseReport;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.SeparatorChoices;
import tankyard.engine.study.Survey;
import tankyard.engine.study.Yard;
import tankyard.engine.takeoff.Takeoff;
import tankyard.engine.window.Window;
import tankyard.engine.window.WindowFinder;

/**
 * The one door to the engine: a lease in, its answer out. Pure: the same lease, catalogue, prices
 * and day give the same answer, bit for bit.
 */
public final class Tankyard {
  private final Catalog catalog;
  private final PriceList prices;
  private final LocalDate today;

  public Tankyard(Catalog catalog, PriceList prices, LocalDate today) {
    this.catalog = catalog;
    this.prices = prices;
    this.today = today;
  }

  public static Tankyard with(CatalogSource source, LocalDate today) {
    return new Tankyard(source.catalog(), source.prices(), today);
  }

  public Catalog catalog() {
    return catalog;
  }

  public LeaseAnswer answer(Lease lease) {
    return answer(lease, Cancel.NEVER);
  }

  /**
   * Works a lease out.
   *
   * @throws java.util.concurrent.CancellationException when called off
   */
  public LeaseAnswer answer(Lease lease, Cancel cancel) {
    Survey survey = Survey.of(lease, catalog);
    List<CaseStudy> studies = new ArrayList<>();
    for (DesignCase designCase : lease.cases()) {
      cancel.check();
      studies.add(new CaseStudy(survey, designCase));
    }
    cancel.check();
    List<Window> windows = WindowFinder.find(studies);
    List<CaseResult> cases = results(studies, gauges(windows), cancel);
    List<Assumption> assumptions = Assumptions.of(lease, cases);
    Yard yard = Yard.of(lease);
    cancel.check();
    Optional<Outlook> outlook = Outlook.of(studies, windows);
    List<Finding> findings =
        AllChecks.look(new Evidence(survey, studies, cases, windows, yard, outlook, assumptions));
    cancel.check();
    return new LeaseAnswer(
        lease,
        cases,
        windows,
        yard,
        SeparatorChoices.of(studies, prices),
        outlook,
        findings,
        bill(survey),
        survey.diagnoses(),
        assumptions);
  }

  /**
   * What would open each separator's window, or save its cold lines, in psi and in money. A full
   * working-out for each change that is tried: for when somebody asks, not while a lease is edited.
   *
   * @throws java.util.concurrent.CancellationException when called off
   */
  public List<CureBook> cures(Lease lease, Cancel cancel) {
    Survey survey = Survey.of(lease, catalog);
    List<CaseStudy> studies = lease.cases().stream().map(c -> new CaseStudy(survey, c)).toList();
    return CureFinder.find(studies, changed -> worked(answer(changed, cancel)));
  }

  private static Trial.Worked worked(LeaseAnswer answer) {
    return new Trial.Worked(answer.cases(), answer.windows(), answer.findings(), answer.bill());
  }

  private static List<CaseResult> results(
      List<CaseStudy> studies, Map<String, Double> gaugePa, Cancel cancel) {
    List<CaseResult> cases = new ArrayList<>();
    for (CaseStudy study : studies) {
      cancel.check();
      cases.add(CaseReport.of(study, gaugePa));
    }
    return cases;
  }

  /** What each gauge reads at its setting, with no oil flowing; nothing where none works. */
  private static Map<String, Double> gauges(List<Window> windows) {
    Map<String, Double> gaugePa = new HashMap<>();
    for (Window window : windows) {
      window.setting().ifPresent(s -> gaugePa.put(window.separatorId(), s.gauge().pascals()));
    }
    return gaugePa;
  }

  private Bill bill(Survey survey) {
    Lease lease = survey.lease();
    Catalog all = catalog.withOwnPipes(lease.ownPipes());
    return Pricing.price(
        Takeoff.of(lease, all, new LaidLengths(survey)), lease.prices(), prices, all, today);
  }
}
