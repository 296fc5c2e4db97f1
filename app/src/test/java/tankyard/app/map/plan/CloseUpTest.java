package tankyard.app.map.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.app.example.SmallLease;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Tank;
import tankyard.engine.units.UnitSystem;

class CloseUpTest {
  private final Lease lease =
      SmallLease.lease()
          .with(SmallLease.tank("OT2", "Oil tank 2", Tank.Duty.OIL, 560, 300))
          .with(SmallLease.tank("OT3", "Oil tank 3", Tank.Duty.OIL, 580, 300));
  private final Plan plan = PlanMaker.of(lease, Optional.empty(), "", UnitSystem.FIELD);

  private Camera at(double pxPerM) {
    return new Camera(plan.bounds().orElseThrow().centre(), pxPerM, 1200, 800);
  }

  @Test
  void tanks_that_cover_each_other_are_drawn_again_larger() {
    CloseUp closeUp = CloseUp.of(plan, at(1)).orElseThrow();
    assertThat(closeUp.ids()).containsExactlyInAnyOrder("OT1", "OT2", "OT3");
    Camera inside = closeUp.camera();
    for (PlanThing thing : plan.things()) {
      assertThat(inside.shows(thing.at(), 10)).isEqualTo(closeUp.holds(thing));
    }
  }

  @Test
  void near_enough_everything_can_be_told_apart() {
    assertThat(CloseUp.of(plan, at(6))).isEmpty();
  }

  @Test
  void a_small_map_has_no_room_for_it() {
    assertThat(CloseUp.of(plan, at(1).resized(500, 400))).isEmpty();
  }
}
