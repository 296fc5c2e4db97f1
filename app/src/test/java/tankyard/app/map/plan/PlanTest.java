package tankyard.app.map.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.app.example.SmallAnswer;
import tankyard.app.example.SmallLease;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.PowerPole;
import tankyard.engine.lease.PowerPoleBuilder;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Well;
import tankyard.engine.lease.WellBuilder;
import tankyard.engine.units.Power;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.units.Voltage;

class PlanTest {
  private static final double FOOT = 0.3048;
  private final Plan plan =
      PlanMaker.of(SmallLease.lease(), Optional.empty(), "summer", UnitSystem.FIELD);
  private final Camera camera =
      new Camera(new MapSpot(0, 0), 1, 1200, 900).fitted(plan.bounds().orElseThrow(), 60);
  private final HitTester hits = new HitTester(plan, camera);
  private final Snapper snapper = new Snapper(plan, camera, Unit.FOOT);

  private Hit hit(double eastFt, double northFt, String... picked) {
    return hits.at(camera.x(eastFt * FOOT), camera.y(northFt * FOOT), List.of(picked));
  }

  @Test
  void a_tank_is_as_wide_as_it_is() {
    PlanThing tank = plan.thing("WT1").orElseThrow();
    assertThat(tank.lengthM()).isCloseTo(10 * FOOT, within(1e-9));
    Camera near = camera.zoomedAt(600, 450, 40);
    SymbolSize size = SymbolSize.of(tank, near);
    assertThat(size.toScale()).isTrue();
    assertThat(size.widthPx()).isCloseTo(near.px(10 * FOOT), within(1e-9));
  }

  @Test
  void a_tank_too_small_to_see_gets_its_symbol() {
    assertThat(SymbolSize.of(plan.thing("WT1").orElseThrow(), camera).toScale()).isFalse();
  }

  @Test
  void things_lie_above_lines() {
    assertThat(hit(240, 220)).isEqualTo(new Hit(Hit.What.THING, "T1", 0));
  }

  @Test
  void a_line_is_hit_between_its_ends_with_the_leg() {
    assertThat(hit(600, 420)).isEqualTo(new Hit(Hit.What.LINE, "L6", 1));
    assertThat(hit(350, 260)).isEqualTo(new Hit(Hit.What.LINE, "L4", 0));
  }

  @Test
  void a_corner_is_hit_only_while_its_line_is_picked() {
    assertThat(hit(500, 420).what()).isEqualTo(Hit.What.LINE);
    assertThat(hit(500, 420, "L6")).isEqualTo(new Hit(Hit.What.CORNER, "L6", 0));
  }

  @Test
  void a_wire_runs_from_the_nearest_pole_to_each_motor() {
    Well well = SmallLease.lease().wells().get(0);
    Lease wired =
        SmallLease.lease()
            .with(WellBuilder.builder(well).motor(Optional.of(Power.ofHorsepower(3))).build())
            .with(pole("NEAR", well.at().east().toFeet() + 100, well.at().north().toFeet()))
            .with(pole("FAR", 9000, 9000));
    List<PlanWire> wires =
        PlanMaker.of(wired, Optional.empty(), "summer", UnitSystem.FIELD).wires();

    assertThat(plan.wires()).isEmpty();
    assertThat(wires).hasSize(1);
    assertThat(wires.get(0).touches(well.id())).isTrue();
    assertThat(wires.get(0).touches("NEAR")).isTrue();
    assertThat(wires.get(0).touches("FAR")).isFalse();
  }

  private static PowerPole pole(String id, double eastFt, double northFt) {
    return PowerPoleBuilder.builder()
        .id(id)
        .name(id)
        .at(MapPoint.ofFeet(eastFt, northFt))
        .status(Status.NEW)
        .volts(Voltage.ofVolts(240))
        .phases(PowerPole.Phases.ONE)
        .build();
  }

  @Test
  void empty_ground_is_nothing() {
    assertThat(hit(100, 600).isNothing()).isTrue();
  }

  @Test
  void a_box_holds_whole_lines_only() {
    MapBox box =
        MapBox.between(new MapSpot(50 * FOOT, 50 * FOOT), new MapSpot(260 * FOOT, 350 * FOOT));
    assertThat(hits.inside(box)).containsExactlyInAnyOrder("W1", "W3", "T1", "L1", "L3");
  }

  @Test
  void places_come_out_in_round_feet() {
    MapSpot spot = snapper.round(new MapSpot(100.123, 50.987));
    double feet = spot.toMapPoint(Unit.FOOT).east().typed().value();
    double step = snapper.stepM() / FOOT;
    assertThat(feet / step).isCloseTo(Math.rint(feet / step), within(1e-6));
    assertThat(spot.metresTo(new MapSpot(100.123, 50.987))).isLessThan(snapper.stepM());
  }

  @Test
  void the_pointer_is_drawn_to_things_then_to_lines() {
    Snap onTee = snapper.toThingsAndLines(camera.x(240 * FOOT) + 5, camera.y(220 * FOOT) - 3);
    assertThat(onTee.thingId()).contains("T1");
    Snap onLine = snapper.toThingsAndLines(camera.x(600 * FOOT), camera.y(420 * FOOT) + 3);
    assertThat(onLine.line()).contains(new Snap.OnLine("L6", 1));
    assertThat(onLine.at().northM()).isCloseTo(420 * FOOT, within(1e-9));
  }

  @Test
  void a_straightened_way_runs_to_one_of_eight_points() {
    MapSpot straight = Snapper.straightened(new MapSpot(0, 0), new MapSpot(100, 8));
    assertThat(straight.northM()).isCloseTo(0, within(1e-9));
    MapSpot slanted = Snapper.straightened(new MapSpot(0, 0), new MapSpot(100, 90));
    assertThat(slanted.eastM()).isCloseTo(slanted.northM(), within(1e-9));
  }

  @Test
  void without_results_nothing_is_claimed() {
    assertThat(plan.marks()).isEmpty();
    assertThat(plan.things()).allSatisfy(t -> assertThat(t.notes()).isEmpty());
  }

  @Test
  void results_stand_beside_the_things_they_belong_to() {
    Plan solved =
        PlanMaker.of(
            SmallLease.lease(), Optional.of(SmallAnswer.answer()), "summer", UnitSystem.FIELD);
    assertThat(solved.thing("W1").orElseThrow().notes()).hasSize(1);
    assertThat(solved.thing("W1").orElseThrow().notes().get(0)).matches("box [\\d.]+ psi");
    long governors =
        solved.marks().size() + solved.things().stream().mapToLong(t -> t.badges().size()).sum();
    assertThat(governors).isEqualTo(2);
  }

  @Test
  void every_thing_and_line_can_be_spoken() {
    assertThat(plan.spoken("WT1"))
        .isEqualTo("Water tank 1. water tank. new. east 700 ft, north 420 ft");
    assertThat(plan.spoken("L6")).isEqualTo("Line 6. water leg from Separator 1 to Water tank 1");
  }
}
