package tankyard.engine.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.lease.OwnPipe;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
import tankyard.engine.working.Source;

class CatalogTest {
  private static final Source SOURCE = Source.memory("test");

  @Test
  void refusesOneIdForTwoItems() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Catalog.of(List.of(sundry("sign"), sundry("sign"))))
        .withMessageContaining("\"sign\"");
  }

  @Test
  void listsAKindSmallOnesFirst() {
    Catalog catalog = Catalog.of(List.of(tee(3), sundry("sign"), tee(1), tee(2)));
    assertThat(catalog.list(Fitting.class))
        .extracting(Fitting::id)
        .containsExactly("tee-1", "tee-2", "tee-3");
  }

  @Test
  void givesAnItemOnlyAsWhatItIs() {
    Catalog catalog = Catalog.of(List.of(sundry("sign")));
    assertThat(catalog.item("sign")).isPresent();
    assertThat(catalog.pipe("sign")).isEmpty();
    assertThat(catalog.loss("sign")).isEmpty();
  }

  @Test
  void takesInALeasesOwnPipe() {
    OwnPipe own =
        new OwnPipe(
            "old-line",
            "Old line",
            Length.ofInches(1.943),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(Pressure.ofPsi(80)));
    Pipe pipe = Catalog.empty().withOwnPipes(List.of(own)).pipe("old-line").orElseThrow();
    assertThat(pipe.bore()).isEqualTo(own.bore());
    assertThat(pipe.nominal()).isEqualTo(NominalSize.ofInches(2));
    assertThat(pipe.source().kind()).isEqualTo(Source.Kind.LEASE);
    Temperature cool = Temperature.ofFahrenheit(60);
    assertThat(pipe.ratingAt(cool, true).orElseThrow().value()).isEqualTo(Pressure.ofPsi(80));
    assertThat(pipe.ratingAt(cool, false)).isEmpty();
  }

  @Test
  void isEmptyWhereNobodyHasOne() {
    assertThat(Catalogs.find().catalog().all()).isEmpty();
    assertThat(Catalogs.find().demoLease()).isEmpty();
  }

  private static Sundry sundry(String id) {
    return new Sundry(id, id, Sundry.Nature.GOODS, SOURCE);
  }

  private static Fitting tee(int inches) {
    return new Fitting(
        "tee-" + inches,
        "Tee",
        Fitting.Part.TEE,
        Optional.empty(),
        Optional.of(NominalSize.ofInches(inches)),
        new Loss.Diameters(20),
        SOURCE);
  }
}
