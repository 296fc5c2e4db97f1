package tankyard.bench;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.api.Tankyard;
import tankyard.engine.catalog.CatalogSource;
import tankyard.engine.catalog.Catalogs;
import tankyard.engine.lease.Lease;
import tankyard.engine.leasefile.LeaseFiles;

/**
 * What one edit in the studio costs: a lease worked out anew, all four cases, window, findings and
 * bill.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ResolveBenchmark {
  /** Which lease: the demo with its twelve wells, or one of that many. */
  public enum Size {
    DEMO,
    WELLS_48 {
      @Override
      Lease lease(Lease demo) {
        return ManyWells.on(demo, 48, 20261125);
      }
    };

    Lease lease(Lease demo) {
      return demo;
    }
  }

  @Param({"DEMO", "WELLS_48"})
  public Size size;

  private Tankyard tankyard;
  private Lease lease;

  @Setup
  public void open() throws IOException {
    CatalogSource source = Catalogs.find();
    tankyard = Tankyard.with(source, LocalDate.of(2026, 11, 25));
    try (InputStream in = source.demoLease().orElseThrow()) {
      lease = size.lease(LeaseFiles.read("demo", in));
    }
    System.out.printf("%n%s: %s%n", size, Shape.of(tankyard.answer(lease)));
  }

  @Benchmark
  public LeaseAnswer resolve() {
    return tankyard.answer(lease);
  }

  /** What is in an answer, so that a benchmark of nothing can't pass for a quick one. */
  private record Shape(int wells, int lines, int cases, int wellResults, int limits, int findings) {
    static Shape of(LeaseAnswer answer) {
      return new Shape(
          answer.lease().wells().size(),
          answer.lease().lines().size(),
          answer.cases().size(),
          answer.cases().stream().mapToInt(c -> c.wells().size()).sum(),
          answer.windows().stream().mapToInt(w -> w.needed().size() + w.allowed().size()).sum(),
          answer.findings().size());
    }
  }
}
