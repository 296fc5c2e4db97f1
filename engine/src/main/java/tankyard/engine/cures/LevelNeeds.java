package tankyard.engine.cures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Tank;
import tankyard.engine.study.LegRun;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.window.PressureLimit;

/**
 * The least against the water tank's level, the tank filled from below: a lower level asks for
 * less, as far as no crest on the way asks for more. The pump lets it fall no lower than where it
 * stops. Line loss, valve and margin stay as they are.
 */
final class LevelNeeds {
  private final LegRun leg;
  private final PressureLimit atTank;
  private final Optional<PressureLimit> onTheWay;
  private final double crestPsi;

  private LevelNeeds(LegRun leg, PressureLimit atTank, Optional<PressureLimit> onTheWay) {
    this.leg = leg;
    this.atTank = atTank;
    this.onTheWay = onTheWay;
    this.crestPsi = onTheWay.map(l -> l.gauge().value().toPsi()).orElse(Double.NEGATIVE_INFINITY);
  }

  /** Empty where no leg leads to a tank. */
  static Optional<TankLevels> of(CureSite site) {
    Optional<PressureLimit> onTheWay =
        site.window().needed().stream()
            .filter(l -> l.kind() == PressureLimit.Kind.CREST)
            .max(Comparator.comparingDouble(l -> l.gauge().value().toPsi()));
    return site.atTank()
        .flatMap(tank -> site.leg(tank).map(leg -> new LevelNeeds(leg, tank, onTheWay).levels()));
  }

  private TankLevels levels() {
    Tank tank = leg.tank();
    boolean drawnSo = tank.entry() == Tank.Entry.BOTTOM;
    double inlet = drawnSo ? tank.inletHeight().toFeet() : TankCures.LOW.toFeet();
    double full = tank.overflowHeight().toFeet();
    double ends = drawnSo ? Math.max(inlet, full) : tank.inletHeight().toFeet();
    double pumpOff = Math.min(full, Math.max(inlet, leg.pumpOff().toFeet()));
    List<TankLevels.AtLevel> levels = new ArrayList<>();
    levels.add(at("at pump-off", pumpOff, ends));
    if (pumpOff < full / 2) {
      levels.add(at("half full", full / 2, ends));
    }
    levels.add(at("full", full, ends));
    double asDrawn = Math.max(crestPsi, atTank.gauge().value().toPsi());
    return new TankLevels(
        tank.id(),
        tank.name(),
        drawnSo,
        Pressure.ofPsi(asDrawn),
        levels,
        onTheWay.map(CureSite::named));
  }

  /**
   * The least at a level.
   *
   * @param endsFeet height above the tank's bottom that the leg as drawn must reach
   */
  private TankLevels.AtLevel at(String words, double feet, double endsFeet) {
    double less =
        Unit.PSI.fromSi(leg.liquid().liquid().staticPascals(Unit.FOOT.toSi(endsFeet - feet)));
    double psi = atTank.gauge().value().toPsi() - less;
    return new TankLevels.AtLevel(
        words, Length.ofFeet(feet), Pressure.ofPsi(Math.max(psi, crestPsi)), crestPsi > psi);
  }
}
