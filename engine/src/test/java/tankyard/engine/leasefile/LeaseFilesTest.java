package tankyard.engine.leasefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import org.junit.jupiter.api.Test;
import tankyard.engine.lease.Lease;

class LeaseFilesTest {

  @Test
  void aLeaseComesBackAsItWasWritten() throws Exception {
    Lease lease = SampleLease.small();
    byte[] bytes = LeaseFiles.write(lease);

    Lease back = LeaseFiles.read("sample", new ByteArrayInputStream(bytes));

    assertThat(back).isEqualTo(lease);
    assertThat(LeaseFiles.write(back)).isEqualTo(bytes);
  }

  @Test
  void aQuantityIsKeptAsTypedOnOneLine() {
    assertThat(LeaseFiles.toJson(SampleLease.small()))
        .contains("\n      \"oil\": {\"value\": 3, \"unit\": \"bbl/d\"},\n")
        .contains("\"at\": {\"east\": {\"value\": 300, \"unit\": \"ft\"}, \"north\":")
        .contains("\"slack\": {\"value\": 5, \"unit\": \"%\"}")
        .contains("\"service\": \"flow-line\"")
        .doesNotContain("unknowns")
        .endsWith("}\n");
  }
}
