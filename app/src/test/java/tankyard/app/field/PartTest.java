package tankyard.app.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tee;
import tankyard.engine.lease.Well;
import tankyard.engine.lease.WellBuilder;
import tankyard.engine.units.Amount;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Unit;

class PartTest {
  private final Well well =
      WellBuilder.builder()
          .id("w1")
          .name("Well 1")
          .at(MapPoint.ofFeet(10, 20))
          .status(Status.HAVE)
          .oil(LiquidRate.ofBarrelsPerDay(3))
          .water(LiquidRate.ofBarrelsPerDay(40))
          .build();

  @Test
  void changesOneComponentAndLeavesTheOthersAlone() {
    Part<Well, LiquidRate> oil = Part.of(Well.class, "oil");
    Well changed = oil.with(well, LiquidRate.ofBarrelsPerDay(5));
    assertThat(changed.oil().toBarrelsPerDay()).isEqualTo(5);
    assertThat(oil.with(changed, well.oil())).isEqualTo(well);
  }

  @Test
  void namesTheComponentsWhereThereIsNoneOfThatName() {
    assertThatThrownBy(() -> Part.of(Tee.class, "height"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("height")
        .hasMessageContaining("ground");
  }

  @Test
  void reachesIntoAPartOfAPart() {
    Part<Well, Length> east =
        Part.<Well, MapPoint>of(Well.class, "at").then(Part.of(MapPoint.class, "east"));
    Well moved = east.with(well, Length.ofFeet(11));
    assertThat(moved.at()).isEqualTo(MapPoint.ofFeet(11, 20));
  }

  @Test
  void takesAnAmountInAndOutOfAnOptionalQuantity() {
    Part<Well, Optional<Amount>> runs = Part.amount(new Component<>(Well.class, "runsPerDay"));
    Well timed = runs.with(well, Optional.of(new Amount(8, Unit.HOUR)));
    assertThat(timed.runsPerDay().orElseThrow().toHours()).isEqualTo(8);
    assertThat(runs.with(timed, Optional.empty())).isEqualTo(well);
  }

  @Test
  void passesOnTheRecordsOwnRefusal() {
    Part<Well, Optional<Amount>> oil = Part.amount(new Component<>(Well.class, "oil"));
    assertThatThrownBy(() -> oil.with(well, Optional.of(new Amount(-1, Unit.BARREL_PER_DAY))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("less than zero");
  }

  @Test
  void changesOneItemOfAList() {
    assertThat(Part.<String>item(1).with(List.of("a", "b", "c"), "x"))
        .containsExactly("a", "x", "c");
  }
}
