package tankyard.engine.leasefile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Thing;

class RoundTripTest {

  @Property(tries = 100, shrinking = ShrinkingMode.OFF)
  void whatIsWrittenIsReadBackTheSame(@ForAll long seed) throws Exception {
    Lease lease = RandomLease.of(seed);

    assertThat(read(LeaseFiles.write(lease))).isEqualTo(lease);
  }

  @Property(tries = 50, shrinking = ShrinkingMode.OFF)
  void whatIsReadIsWrittenBackByteForByte(@ForAll long seed) throws Exception {
    byte[] bytes = LeaseFiles.write(RandomLease.of(seed));

    assertThat(LeaseFiles.write(RandomLease.of(seed))).isEqualTo(bytes);
    assertThat(LeaseFiles.write(read(bytes))).isEqualTo(bytes);
  }

  /** A field this version does not know, at the end of each object, quantities included. */
  @Property(tries = 50, shrinking = ShrinkingMode.OFF)
  void fieldsFromElsewhereAreWrittenBackWhereTheyStood(@ForAll long seed) throws Exception {
    JsonNode tree = LeaseMapper.mapper().readTree(LeaseFiles.write(RandomLease.of(seed)));
    addUnknownFields(tree, new Random(seed));
    String text = LeasePrinter.print(tree);

    Lease lease = read(text.getBytes(StandardCharsets.UTF_8));

    assertThat(lease.unknowns().fields()).isNotEmpty();
    assertThat(LeaseFiles.toJson(lease)).isEqualTo(text);
  }

  @Test
  void theRandomLeasesHaveEverythingInThem() {
    List<Lease> leases = LongStream.range(0, 40).mapToObj(RandomLease::of).toList();

    Set<Class<?>> kinds =
        leases.stream()
            .flatMap(Lease::things)
            .map(Object::getClass)
            .collect(Collectors.toCollection(HashSet::new));
    assertThat(kinds).containsExactlyInAnyOrderElementsOf(kindsOf(Thing.class).toList());
    String all = leases.stream().map(LeaseFiles::toJson).collect(Collectors.joining());
    for (QuantityKind<?> kind : QuantityKind.ALL) {
      boolean used =
          Limits.table().values().stream().anyMatch(l -> l.unit().dimension() == kind.dimension());
      assertThat(
              !used
                  || tankyard.engine.units.Unit.symbols(kind.dimension()).stream()
                      .allMatch(u -> all.contains("\"unit\": \"" + u + "\"")))
          .as(kind.dimension().words())
          .isTrue();
    }
  }

  /** The records of a sealed family, those of its branches too. */
  private static Stream<Class<?>> kindsOf(Class<?> family) {
    return Arrays.<Class<?>>stream(family.getPermittedSubclasses())
        .flatMap(kind -> kind.isSealed() ? kindsOf(kind) : Stream.of(kind));
  }

  private static Lease read(byte[] bytes) throws LeaseFileException {
    return LeaseFiles.read("random" + LeaseFiles.EXTENSION, new ByteArrayInputStream(bytes));
  }

  private static void addUnknownFields(JsonNode node, Random random) {
    List<JsonNode> children = new ArrayList<>();
    node.forEach(children::add);
    children.forEach(child -> addUnknownFields(child, random));
    if (node instanceof ObjectNode object) {
      switch (random.nextInt(4)) {
        case 0 -> object.put("colour/of~it", "gr\u00fcn");
        case 1 -> object.putObject("later").put("on", 1.50).putArray("list").add(1).addNull();
        case 2 -> object.putNull("noted");
        default -> object.put("heft", new java.math.BigDecimal("12.500"));
      }
    }
  }
}
