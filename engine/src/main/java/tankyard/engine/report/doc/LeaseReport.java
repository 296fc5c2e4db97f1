package tankyard.engine.report.doc;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.units.UnitSystem;

/** Writes the report of a lease, section by section. */
public final class LeaseReport {
  /** Stands on every print. */
  public static final String STANDING =
      "Planning aid, not an engineer's design; field-check heights and pressures.";

  private LeaseReport() {}

  /** What each separator's gauge must read, in one sentence each, as on the report's first page. */
  public static List<String> headline(Results results, UnitSystem units) {
    return InShort.windows(new Draft(results, units));
  }

  public static Report of(Results results, UnitSystem units) {
    Draft draft = new Draft(results, units);
    List<Section> sections = new ArrayList<>();
    sections.addAll(InShort.of(draft));
    sections.addAll(WindowSection.of(draft));
    sections.addAll(WellSection.of(draft));
    sections.addAll(LineSection.of(draft));
    sections.addAll(ColdSection.of(draft));
    sections.addAll(VesselSection.of(draft));
    sections.addAll(GasSection.of(draft));
    sections.addAll(TreaterSection.of(draft));
    sections.addAll(GunBarrelSection.of(draft));
    sections.addAll(TankSection.of(draft));
    sections.addAll(SwitchSection.of(draft));
    sections.addAll(VentSection.of(draft));
    sections.addAll(OverflowSection.of(draft));
    sections.addAll(InjectionSection.of(draft));
    sections.addAll(PowerSection.of(draft));
    sections.addAll(OutlookSection.of(draft));
    sections.addAll(BermSection.of(draft));
    sections.addAll(ClearanceSection.of(draft));
    sections.addAll(FindingSection.of(draft));
    sections.addAll(BillSection.of(draft));
    sections.addAll(CureSection.of(draft));
    sections.addAll(AssumptionSection.of(draft));
    return draft.finish(STANDING, sections);
  }
}
