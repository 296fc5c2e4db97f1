package tankyard.engine.study;

import java.util.List;
import tankyard.engine.catalog.Pipe;
import tankyard.engine.lease.Line;
import tankyard.engine.pipes.LineLaw;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;

/**
 * A line in its trench: where the pipe lies, how long it is, and its law.
 *
 * @param trenchM length of pipe in the trench, slack included, risers not
 * @param pegs one for each station of the law's path
 */
public record LaidLine(Line line, Pipe pipe, LineLaw law, double trenchM, List<Peg> pegs) {

  /**
   * A station of the pipe.
   *
   * @param pipeM distance along the pipe
   * @param mapM distance along the route on the map
   * @param groundM elevation of the ground
   * @param elevationM of the pipe
   */
  public record Peg(double pipeM, double mapM, double groundM, double elevationM) {}

  public LaidLine {
    pegs = List.copyOf(pegs);
  }

  public String id() {
    return line.id();
  }

  /** The peg at a distance along the pipe, or the last before it. */
  Peg pegAt(double pipeM) {
    Peg found = pegs.get(0);
    for (Peg peg : pegs) {
      if (peg.pipeM() <= pipeM + 1e-6) {
        found = peg;
      }
    }
    return found;
  }

  /** What stands in the part of it above an elevation. */
  double contentsAboveM3(double elevationM) {
    double above = 0;
    for (int i = 1; i < pegs.size(); i++) {
      Peg a = pegs.get(i - 1);
      Peg b = pegs.get(i);
      double low = Math.min(a.elevationM(), b.elevationM());
      double high = Math.max(a.elevationM(), b.elevationM());
      double share = high > low ? (high - Math.max(low, elevationM)) / (high - low) : 1;
      above += high > elevationM ? share * (b.pipeM() - a.pipeM()) : 0;
    }
    double bore = pipe.bore().metres();
    return Math.PI / 4 * bore * bore * above;
  }

  /** The ground over the pipe: at a peg its own, between two straight. */
  double groundM(Peg before, double pipeM) {
    int next = pegs.indexOf(before) + 1;
    if (next >= pegs.size() || pipeM - before.pipeM() <= 1e-6) {
      return before.groundM();
    }
    Peg after = pegs.get(next);
    double share = (pipeM - before.pipeM()) / (after.pipeM() - before.pipeM());
    return before.groundM() + share * (after.groundM() - before.groundM());
  }

  static Length feet(double metres) {
    return Length.of(Unit.FOOT.fromSi(metres), Unit.FOOT);
  }

  static Elevation elevation(double metres) {
    return Elevation.of(Unit.FOOT.fromSi(metres), Unit.ELEVATION_FOOT);
  }
}
