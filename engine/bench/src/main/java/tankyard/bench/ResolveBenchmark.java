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
 * What one edit in the studio costs: the demo lease worked out anew, all cases, window, findings
 * and bill.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ResolveBenchmark {
  private Tankyard tankyard;
  private Lease lease;

  @Setup
  public void open() throws IOException {
    CatalogSource source = Catalogs.find();
    tankyard = Tankyard.with(source, LocalDate.of(2026, 11, 25));
    try (InputStream in = source.demoLease().orElseThrow()) {
      lease = LeaseFiles.read("demo", in);
    }
  }

  @Benchmark
  public LeaseAnswer resolve() {
    return tankyard.answer(lease);
  }
}
