package tankyard.engine.study;

import java.util.List;
import java.util.stream.Stream;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.units.Length;

/** What stands round, upright and full of liquid behind a berm: a tank, or a gun barrel. */
public record Shell(String id, String name, MapPoint at, Length diameter, Length height) {

  /** All that stay. */
  public static List<Shell> of(Lease lease) {
    return Stream.concat(
            lease.gunBarrels().stream()
                .filter(g -> g.status().stays())
                .map(g -> new Shell(g.id(), g.name(), g.at(), g.diameter(), g.shellHeight())),
            lease.tanks().stream()
                .filter(t -> t.status().stays())
                .map(t -> new Shell(t.id(), t.name(), t.at(), t.diameter(), t.shellHeight())))
        .toList();
  }

  double footprintM2() {
    return Math.PI / 4 * Math.pow(diameter.metres(), 2);
  }

  double cubicMetres() {
    return footprintM2() * height.metres();
  }
}
