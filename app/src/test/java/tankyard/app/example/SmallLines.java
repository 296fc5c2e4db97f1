package tankyard.app.example;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Service;
import tankyard.engine.study.LineProfile;
import tankyard.engine.study.LineResult;
import tankyard.engine.study.LineResultBuilder;
import tankyard.engine.study.LineTemperatures;
import tankyard.engine.study.PipePoint;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Viscosity;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** Lines of the small lease as worked out: a water leg over a crest, and a slope. */
final class SmallLines {
  private SmallLines() {}

  static LineResult line(Line line, double factor) {
    boolean leg = line.service() == Service.WATER_LEG;
    return LineResultBuilder.builder()
        .lineId(line.id())
        .service(line.service())
        .flow(LiquidRate.ofBarrelsPerDay(81 * factor))
        .flowWords("day's average")
        .length(Length.ofFeet(310))
        .lift(SmallAnswer.psi("Lift", leg ? 10.2 : -1.4))
        .friction(SmallAnswer.psi("Friction", 0.86 * factor))
        .start(Pressure.ofPsi(12.4))
        .end(Pressure.ofPsi(leg ? 0 : 11.1))
        .velocityFtPerS(0.42 * factor)
        .reynolds(5400 * factor)
        .regime("turbulent")
        .crest(
            leg
                ? Optional.of(new LineResult.Crest(Length.ofFeet(126), Elevation.ofFeet(1027)))
                : Optional.empty())
        .rating(Optional.of(Pressure.ofPsi(80)))
        .contents(Volume.ofBarrels(1.2))
        .viscosity(thick())
        .temperatures(
            new LineTemperatures(
                Temperature.ofFahrenheit(45),
                Temperature.ofFahrenheit(45),
                Temperature.ofFahrenheit(45),
                Temperature.ofFahrenheit(45),
                Optional.empty()))
        .profile(LineProfile.of(leg ? legPoints() : slope()))
        .build();
  }

  private static Computed<Viscosity> thick() {
    return Computed.of(
        Viscosity.ofCentipoise(1.2),
        () ->
            Working.of(
                "Viscosity",
                "mu",
                "m",
                Unit.CENTIPOISE,
                Source.definition("a test"),
                Term.of("m", "as put in", 1.2, Unit.CENTIPOISE)));
  }

  private static List<PipePoint> legPoints() {
    double[][] rows = {
      {0, 1010, 1007, 12.4},
      {40, 1016, 1013, 9.4},
      {90, 1026, 1023, 4.2},
      {126, 1030, 1027, 0},
      {180, 1024, 1021, 0},
      {240, 1016, 1013, 0},
      {310, 1008, 1022, 0}
    };
    return IntStream.range(0, rows.length)
        .mapToObj(i -> point(rows[i][0], rows[i][1], rows[i][2], rows[i][3], i > 2))
        .toList();
  }

  private static List<PipePoint> slope() {
    return List.of(
        point(0, 1001, 998, 12.4, false),
        point(150, 1006, 1003, 11.8, false),
        point(310, 1010, 1007, 11.1, false));
  }

  private static PipePoint point(
      double distance, double ground, double pipe, double psi, boolean partFull) {
    return new PipePoint(
        Length.ofFeet(distance),
        Elevation.ofFeet(ground),
        Elevation.ofFeet(pipe),
        Pressure.ofPsi(psi),
        partFull,
        Optional.empty());
  }
}
