package tankyard.app.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tankyard.app.example.SmallLease;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Service;
import tankyard.engine.leasefile.LeaseFiles;

class BlanksTest {
  private final Blanks blanks = new Blanks("usual-pipe");

  @ParameterizedTest
  @EnumSource
  void a_lease_with_a_blank_thing_can_be_saved_and_opened(ThingKind kind) {
    Lease lease =
        SmallLease.bare().with(blanks.thing(SmallLease.bare(), kind, SmallLease.at(1, 2)));
    assertThat(LeaseFiles.problems("blank", lease)).isEmpty();
    assertThat(ThingKind.of(lease.things().findFirst().orElseThrow())).isEqualTo(kind);
  }

  @Test
  void a_line_takes_the_pipe_most_used_and_the_service_its_ends_suggest() {
    Lease lease = SmallLease.lease();
    Line line = blanks.line(lease, "S1", "WT1", List.of());
    assertThat(line.pipe()).isEqualTo("any-pipe");
    assertThat(line.service()).isEqualTo(Service.WATER_LEG);
    assertThat(line.name()).isEqualTo("Water leg 1");
  }

  @Test
  void the_first_line_of_a_lease_takes_the_catalogues_usual_pipe() {
    Lease lease = SmallLease.bare();
    for (ThingKind kind : List.of(ThingKind.WELL, ThingKind.SEPARATOR)) {
      lease = lease.with(blanks.thing(lease, kind, SmallLease.at(10, 10)));
    }
    assertThat(blanks.line(lease, "W1", "S1", List.of()).pipe()).isEqualTo("usual-pipe");
  }
}
