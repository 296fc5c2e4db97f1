package tankyard.engine.api;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.study.LaidLine;
import tankyard.engine.study.Survey;
import tankyard.engine.takeoff.GroundLengths;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;

/**
 * How much pipe each line takes in its trench, for the takeoff. A line whose pipe nobody knows
 * still has a length: the one typed, or the one on the map.
 */
record LaidLengths(Survey survey) implements GroundLengths {
  @Override
  public double metres(Line line) {
    LaidLine laid = survey.laid().get(line.id());
    return laid != null
        ? laid.trenchM()
        : line.length().map(Length::metres).orElseGet(() -> onTheMap(line));
  }

  private double onTheMap(Line line) {
    List<MapPoint> way = new ArrayList<>();
    survey.lease().thing(line.from()).ifPresent(t -> way.add(t.at()));
    line.route().stream().map(RoutePoint::at).forEach(way::add);
    survey.lease().thing(line.to()).ifPresent(t -> way.add(t.at()));
    double sum = 0;
    for (int i = 1; i < way.size(); i++) {
      sum += way.get(i - 1).metresTo(way.get(i));
    }
    return sum * (1 + line.slack().map(Fraction::ratio).orElse(0.0));
  }
}
