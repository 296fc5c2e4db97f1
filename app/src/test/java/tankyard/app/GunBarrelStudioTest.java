package tankyard.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;
import tankyard.app.edit.Hand.InHand;
import tankyard.app.example.SmallLease;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.OwnPipe;
import tankyard.engine.lease.Service;
import tankyard.engine.study.GunBarrelResult;
import tankyard.engine.units.Length;

/** A gun barrel from the rack to its answer, with mouse, keys and the sheet. */
class GunBarrelStudioTest extends StudioFixture {
  /** The small lease with a bore for its pipe, so that the lines can be worked out. */
  @Override
  Lease first() {
    OwnPipe pipe =
        new OwnPipe(
            "any-pipe",
            "3-in steel",
            Length.ofInches(3.068),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    return SmallLease.lease().withOwnPipes(List.of(pipe));
  }

  private LeaseAnswer answer() {
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(studio.solve().latest().orElseThrow().revision())
        .isEqualTo(studio.store().revision());
    return studio.solve().latest().orElseThrow().answer();
  }

  private GunBarrelResult barrel() {
    return answer().cases().get(0).gunBarrel("GB1").orElseThrow();
  }

  private void place() {
    clickOn("#rack-gun-barrel");
    clickOn(onScreen(300, 640));
  }

  private void connect(String from, String to) {
    clickOn("#rack-line");
    clickOn(thing(from));
    clickOn(thing(to));
  }

  @Test
  void it_is_placed_joined_and_worked_out() {
    place();
    GunBarrel placed = lease().gunBarrels().get(0);
    assertThat(placed.name()).isEqualTo("Gun barrel 1");
    assertThat(barrel().falls()).isEmpty();

    connect("GB1", "WT1");
    connect("GB1", "OT1");

    assertThat(lease().linesOf("GB1").map(l -> l.service()))
        .containsExactly(Service.WATER_LEG, Service.OIL_LEG);
    assertThat(barrel().falls()).hasSize(2);
  }

  @Test
  void its_sheet_takes_any_unit_and_undo_takes_it_back() {
    place();
    Lease before = lease();
    double weir = barrel().cut().weir().value().toFeet();
    type("gun-barrel-interface-height", "9 ft 6 in");
    assertThat(lease().gunBarrels().get(0).interfaceHeight().toFeet()).isEqualTo(9.5);
    assertThat(barrel().cut().weir().value().toFeet()).isLessThan(weir - 0.05);

    type("gun-barrel-weir-height", "5 m");
    assertThat(barrel().cut().stands().value().metres()).isCloseTo(5, within(1e-9));

    interact(() -> studio.mapPane().view().requestFocus());
    push(KeyCode.CONTROL, KeyCode.Z).push(KeyCode.CONTROL, KeyCode.Z);
    assertThat(lease()).isEqualTo(before);
    assertThat(barrel().cut().weir().value().toFeet()).isCloseTo(weir, within(1e-12));
  }

  private void type(String field, String words) {
    TextField text = lookup("#" + field).queryAs(TextField.class);
    interact(
        () -> {
          text.requestFocus();
          text.selectAll();
        });
    write(words).push(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();
  }

  @Test
  void what_no_file_could_hold_is_refused_in_the_field() {
    place();
    type("gun-barrel-interface-height", "19 ft");
    assertThat(lease().gunBarrels().get(0).interfaceHeight().toFeet()).isEqualTo(10);
  }

  @Test
  void it_is_set_down_with_keys_only() {
    interact(() -> studio.mapPane().view().requestFocus());
    push(KeyCode.ALT, KeyCode.DIGIT4);
    settle();
    assertThat(studio.hand().inHand()).isEqualTo(InHand.GUN_BARREL);
    push(KeyCode.SHIFT, KeyCode.LEFT).push(KeyCode.ENTER);
    assertThat(lease().gunBarrels()).hasSize(1);
    push(KeyCode.CONTROL, KeyCode.Z);
    assertThat(lease()).isEqualTo(first());
  }
}
