package tankyard.engine.checks.injection;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.study.PumpDrive;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;

/** A pump's plungers and speed do not make the rate that everything else was worked out for. */
public final class PumpRateCheck implements Check {
  /** What slip and a worn belt may make of it. */
  private static final double CLOSE = 0.05;

  private static final Source SOURCE =
      Source.commonPractice("within 5 %: slip and belt are not known better");

  @Override
  public String id() {
    return "pump-rate-off";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    List<Finding> found = new ArrayList<>();
    for (PumpDrive drive : evidence.yard().drives()) {
      evidence.lease().injectionPumps().stream()
          .filter(pump -> pump.id().equals(drive.pumpId()))
          .forEach(
              pump ->
                  drive
                      .delivers()
                      .filter(d -> isOff(d.value(), pump.rate()))
                      .ifPresent(d -> found.add(finding(pump, drive, d))));
    }
    return found;
  }

  private static boolean isOff(LiquidRate delivers, LiquidRate typed) {
    double share = delivers.toBarrelsPerDay() / typed.toBarrelsPerDay();
    return Math.abs(share - 1) > CLOSE;
  }

  private Finding finding(InjectionPump pump, PumpDrive drive, Computed<LiquidRate> delivers) {
    Versus rate = Versus.of(delivers.value(), pump.rate(), Unit.BARREL_PER_DAY, 0);
    String sheave =
        drive
            .motorSheave()
            .map(
                s ->
                    ", with a sheave of " + Versus.print(s.value(), Unit.INCH, 1) + " on its motor")
            .orElse("");
    return Finding.of(
            id(),
            Severity.LOOK,
            pump.id(),
            pump.name()
                + " as typed delivers "
                + rate.value()
                + "; wellhead pressure, hours and power were worked out for "
                + rate.limit()
                + ".",
            SOURCE)
        .mendedBy(
            "Turn it at "
                + Versus.print(drive.speed().value(), Unit.RPM, 0)
                + sheave
                + ", or type the rate it delivers.")
        .shownBy(delivers.working());
  }
}
