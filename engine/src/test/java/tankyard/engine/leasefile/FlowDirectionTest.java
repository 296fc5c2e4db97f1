package tankyard.engine.leasefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.LineBuilder;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.TeeBuilder;

class FlowDirectionTest {

  @Test
  void aLoopOfFlowLinesIsNoFault() {
    Lease lease =
        withTees("A", "B", "C")
            .with(line("1", Service.FLOW_LINE, "A", "B"))
            .with(line("2", Service.FLOW_LINE, "B", "C"))
            .with(line("3", Service.FLOW_LINE, "C", "A"));

    assertThat(FlowDirection.complaints(lease)).isEmpty();
  }

  @Test
  void aRingWithAnythingElseInItIsReportedAtThatLine() {
    Lease lease =
        withTees("A", "B")
            .with(line("1", Service.FLOW_LINE, "A", "B"))
            .with(line("2", Service.WATER_LEG, "B", "A"));

    assertThat(FlowDirection.complaints(lease))
        .singleElement()
        .satisfies(
            c -> {
              assertThat(c.place()).isEqualTo("/lines/2");
              assertThat(c.found()).isEqualTo("water leg \"2\" in a ring through A, B");
            });
  }

  @Test
  void aLineFromTheSeparatorToAWellRunsBackwards() {
    Lease lease = SampleLease.small().with(line("back", Service.FLOW_LINE, "S", "W1"));

    assertThat(FlowDirection.complaints(lease))
        .singleElement()
        .extracting(Complaint::place)
        .isEqualTo("/lines/1/to");
  }

  @Test
  void aWaterReturnMayRunFromAPumpOrTeeToAWell() {
    Lease lease =
        withTees("A", "B")
            .with(line("1", Service.WATER_RETURN, "A", "W1"))
            .with(line("2", Service.FLOW_LINE, "W1", "B"))
            .with(line("3", Service.WATER_LEG, "B", "A"));

    assertThat(FlowDirection.complaints(lease)).isEmpty();
  }

  @Test
  void aWaterReturnMayLeadFromTheSeparatorToAWellAndNothingElseMay() {
    Lease small = SampleLease.small();

    assertThat(FlowDirection.complaints(small.with(line("back", Service.WATER_RETURN, "S", "W1"))))
        .isEmpty();
    assertThat(FlowDirection.complaints(small.with(line("back", Service.WATER_LEG, "S", "W1"))))
        .hasSize(1);
  }

  private static Lease withTees(String... ids) {
    Lease lease = SampleLease.small();
    for (String id : ids) {
      lease =
          lease.with(
              TeeBuilder.builder()
                  .id(id)
                  .name(id)
                  .at(MapPoint.ofFeet(0, 0))
                  .status(Status.NEW)
                  .build());
    }
    return lease;
  }

  private static Line line(String id, Service service, String from, String to) {
    return LineBuilder.builder()
        .id(id)
        .name(id)
        .service(service)
        .from(from)
        .to(to)
        .route(List.of())
        .pipe("poly-2")
        .fittings(List.of())
        .status(Status.NEW)
        .build();
  }
}
