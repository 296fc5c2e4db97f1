package tankyard.engine.cures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.api.Cancel;
import tankyard.engine.api.Tankyard;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.PriceList;
import tankyard.engine.designs.ExampleLease;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.TankBuilder;
import tankyard.engine.units.Length;

/** The least against the level in the water tank. */
class TankLevelsTest {
  private static final Tankyard TANKYARD =
      new Tankyard(Catalog.empty(), PriceList.empty(), LocalDate.of(2026, 5, 1));

  private static CureBook book(Lease lease) {
    return TANKYARD.cures(lease, Cancel.NEVER).get(0);
  }

  private static double least(Lease lease) {
    return TANKYARD.answer(lease).windows().get(0).least().orElseThrow().gauge().value().toPsi();
  }

  @Test
  void aFullTankFilledFromBelowAsksForWhatItAsksForDrawnSo() {
    Lease lease = ExampleLease.of("p1-osage-bend");
    TankLevels tank = book(lease).levels().orElseThrow();
    Tank water = (Tank) lease.thing(tank.tankId()).orElseThrow();
    Lease drawn =
        lease.with(
            TankBuilder.builder(water)
                .entry(Tank.Entry.BOTTOM)
                .inletHeight(Length.ofFeet(1))
                .build());
    TankLevels then = book(drawn).levels().orElseThrow();

    assertThat(tank.drawnSo()).isFalse();
    assertThat(tank.asDrawn().toPsi()).isCloseTo(least(lease), within(1e-9));
    // A riser of 14 ft less rubs a little less.
    assertThat(tank.levels().get(2).gauge().toPsi()).isCloseTo(least(drawn), within(0.02));
    assertThat(then.drawnSo()).isTrue();
    assertThat(then.levels().get(2).gauge().toPsi()).isCloseTo(least(drawn), within(1e-9));
  }

  @Test
  void aHalfFullTankFilledFromBelowGivesBackHalfItsHeightOfBrine() {
    TankLevels tank = book(ExampleLease.of("p1-osage-bend")).levels().orElseThrow();
    List<Double> psi = tank.levels().stream().map(l -> l.gauge().toPsi()).toList();
    double height = tank.levels().get(2).level().toFeet();

    assertThat(tank.levels()).extracting(TankLevels.AtLevel::words).contains("half full");
    assertThat(psi.get(2) - psi.get(1)).isCloseTo(0.4331 * 1.06 * height / 2, within(0.02));
    // Nobody said where the pump stops: half of pump-on, which is half of the overflow's height.
    double pumpOff = tank.levels().get(0).level().toFeet();
    assertThat(tank.levels().get(0).words()).isEqualTo("at pump-off");
    assertThat(pumpOff).isCloseTo(height / 4, within(1e-9));
    assertThat(psi.get(2) - psi.get(0)).isCloseTo(0.4331 * 1.06 * (height - pumpOff), within(0.03));
  }

  @Test
  void aTankWhosePumpStopsAboveItsMiddleIsNeverHalfFull() {
    Lease lease = ExampleLease.of("p1-osage-bend");
    TankLevels tank = book(lease).levels().orElseThrow();
    Tank water = (Tank) lease.thing(tank.tankId()).orElseThrow();
    Length off = Length.ofFeet(water.overflowHeight().toFeet() * 0.6);
    Lease high =
        lease.with(
            TankBuilder.builder(water)
                .pumpOff(Optional.of(off))
                .pumpOn(Optional.of(Length.ofFeet(water.overflowHeight().toFeet() * 0.8)))
                .build());
    assertThat(book(high).levels().orElseThrow().levels())
        .extracting(TankLevels.AtLevel::words)
        .containsExactly("at pump-off", "full");
    assertThat(book(high).levels().orElseThrow().levels().get(0).level()).isEqualTo(off);
  }

  @Test
  void behindAHillTheLevelInTheTankDoesNotCount() {
    Lease lease = ExampleLease.of("p2-sandstone-knob");
    TankLevels tank = book(lease).levels().orElseThrow();
    assertThat(tank.heldOnTheWay()).isTrue();
    assertThat(tank.onTheWay().orElseThrow()).isEqualTo("the crest 1,000 ft out on Water leg");
    assertThat(book(ExampleLease.of("p1-osage-bend")).levels().orElseThrow().heldOnTheWay())
        .isFalse();
    assertThat(tank.levels())
        .allSatisfy(
            at -> {
              assertThat(at.crest()).isTrue();
              assertThat(at.gauge().toPsi()).isCloseTo(least(lease), within(1e-9));
            });
  }
}
