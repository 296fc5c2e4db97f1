package tankyard.engine.outlook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.window.Window;

/**
 * What runs out next.
 *
 * @param doubles the time in which the water doubles
 * @param rows what runs out within {@link #HORIZON_MONTHS}, the first first
 */
public record Outlook(Time doubles, List<RunOut> rows) {
  /** Nobody plans a lease further ahead. */
  public static final double HORIZON_MONTHS = 60;

  public Outlook {
    rows = List.copyOf(rows);
  }

  /** Empty where the lease does not say that its water grows, or has no case. */
  public static Optional<Outlook> of(List<CaseStudy> studies, List<Window> windows) {
    if (studies.isEmpty()) {
      return Optional.empty();
    }
    return studies.get(0).lease().practice().waterDoubles().map(td -> of(studies, windows, td));
  }

  private static Outlook of(List<CaseStudy> studies, List<Window> windows, Time doubles) {
    Flood flood = new Flood(studies, doubles);
    List<RunOut> rows = new ArrayList<>();
    if (flood.today().get(0).waterDay().toBarrelsPerDay() > 0) {
      rows.addAll(new WaterSide(flood).rows());
      rows.addAll(new WindowSide(flood, windows).rows());
    }
    rows.removeIf(r -> r.after().value().in(Unit.MONTH) > HORIZON_MONTHS);
    rows.sort(Comparator.comparingDouble(r -> r.after().value().seconds()));
    return new Outlook(doubles, rows);
  }

  public Optional<RunOut> of(RunOut.Kind kind) {
    return rows.stream().filter(r -> r.kind() == kind).findFirst();
  }
}
