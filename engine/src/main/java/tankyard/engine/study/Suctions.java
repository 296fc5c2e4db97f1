package tankyard.engine.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Tank;
import tankyard.engine.pumps.Acceleration;
import tankyard.engine.pumps.Suction;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Length;
import tankyard.engine.units.Rotation;
import tankyard.engine.units.Speed;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * The suction side of each pump: from a water tank at pump-off, its lowest, through the drawn
 * suction lines at the pump's whole rate, in lines that pumps share at that of all of them. Where
 * several tanks feed a pump the worst of them is shown. The water is as warm as the ground;
 * acceleration counts every line's real length.
 */
final class Suctions {
  private final CaseStudy study;

  private Suctions(CaseStudy study) {
    this.study = study;
  }

  static List<SuctionResult> of(CaseStudy study) {
    Suctions suctions = new Suctions(study);
    return running(study).flatMap(p -> suctions.worst(p).stream()).toList();
  }

  /** The suction lines as they run with all pumps on. */
  static void lines(CaseStudy study, Map<String, LineRun> runs) {
    Suctions suctions = new Suctions(study);
    running(study)
        .flatMap(pump -> suctions.ways(pump).stream())
        .forEach(way -> suctions.runs(way).forEach(run -> runs.put(run.laid().id(), run)));
  }

  private static Stream<InjectionPump> running(CaseStudy study) {
    return study.lease().injectionPumps().stream()
        .filter(p -> p.status().stays() && p.rate().cubicMetresPerSecond() > 0);
  }

  /** From a tank to a pump, the line at the tank first. */
  private record Way(Tank tank, List<LaidLine> lines) {}

  private List<Way> ways(InjectionPump pump) {
    List<Way> found = new ArrayList<>();
    back(pump.id(), List.of(), found);
    return found;
  }

  private void back(String here, List<LaidLine> sofar, List<Way> found) {
    for (LaidLine line : study.survey().laid().values()) {
      boolean leadsHere =
          line.line().service() == Service.SUCTION
              && line.line().to().equals(here)
              && !sofar.contains(line);
      if (leadsHere) {
        List<LaidLine> way = new ArrayList<>(List.of(line));
        way.addAll(sofar);
        study.survey().tank(line.line().from()).ifPresent(t -> found.add(new Way(t, way)));
        back(line.line().from(), way, found);
      }
    }
  }

  private Optional<SuctionResult> worst(InjectionPump pump) {
    return ways(pump).stream()
        .map(way -> result(pump, way))
        .min(Comparator.comparingDouble(r -> r.available().value().metres()));
  }

  /** What every pump that can draw through a line takes, all of them running, m3/s. */
  private double rate(LaidLine line) {
    return running(study)
        .filter(p -> ways(p).stream().anyMatch(way -> way.lines().contains(line)))
        .mapToDouble(p -> p.rate().cubicMetresPerSecond())
        .sum();
  }

  /** Each line at the rate of its pumps, pressures from the tank's level at pump-off. */
  private List<LineRun> runs(Way way) {
    double level = levelM(way.tank());
    List<LineRun> runs = new ArrayList<>();
    double before = 0;
    for (LaidLine line : way.lines()) {
      double rate = rate(line);
      before += line.law().friction(study.brine().liquid()).drop(rate).pascals();
      double endM = line.pegs().get(line.pegs().size() - 1).elevationM();
      double down = study.brine().liquid().staticPascals(level - endM) - before;
      runs.add(LineRun.of(line, rate, "rate while its pumps run", study.brine(), down));
    }
    return runs;
  }

  private double levelM(Tank tank) {
    return study.survey().ground().metresUnder(tank) + Storage.pumpOff(tank).metres();
  }

  private SuctionResult result(InjectionPump pump, Way way) {
    double perMetre = study.brine().liquid().staticPascals(1);
    double frictionM =
        way.lines().stream()
                .mapToDouble(l -> l.law().friction(study.brine().liquid()).drop(rate(l)).pascals())
                .sum()
            / perMetre;
    double suctionM = study.survey().ground().metresUnder(pump) + pump.suctionHeight().metres();
    Length level = LaidLine.feet(levelM(way.tank()) - suctionM);
    Length friction = LaidLine.feet(frictionM);
    Computed<Length> acceleration = acceleration(pump, way.lines());
    Computed<Length> available =
        Suction.openTank(altitude(pump), study.ground(), study.brine().gravity().value())
            .available(level.toFeet(), friction, acceleration.value());
    return new SuctionResult(
        pump.id(),
        way.tank().id(),
        level,
        friction,
        acceleration,
        Computed.of(
            available.value(), () -> available.working().from(List.of(acceleration.working()))),
        pump.suctionNeeded(),
        pump.suctionNeeded().map(needed -> lowest(level, available, needed)));
  }

  private static Computed<Length> lowest(Length level, Computed<Length> available, Length needed) {
    return Computed.of(
        Length.ofFeet(
            level.toFeet()
                - available.value().toFeet()
                + needed.toFeet()
                + SuctionResult.SPARE.toFeet()),
        () ->
            Working.of(
                    "Lowest water over the suction",
                    "h",
                    "h1-a+n+s",
                    Unit.FOOT,
                    Source.definition("a foot less water leaves a foot less head"),
                    Term.of("h1", "water over it at pump-off", level, Unit.FOOT),
                    Term.of("a", "head left then", available.value(), Unit.FOOT),
                    Term.of("n", "head its maker asks for", needed, Unit.FOOT),
                    Term.of("s", "kept to spare", SuctionResult.SPARE, Unit.FOOT))
                .from(List.of(available.working())));
  }

  private Computed<Length> acceleration(InjectionPump pump, List<LaidLine> lines) {
    Acceleration law = law(pump.plungers().orElse(Defaults.PUMP_PLUNGERS));
    Rotation speed = pump.speed().orElse(Defaults.PUMP_SPEED);
    List<Computed<Length>> parts = new ArrayList<>();
    for (LaidLine line : lines) {
      double bore = line.pipe().bore().metres();
      double velocity = rate(line) / (Math.PI / 4 * bore * bore);
      parts.add(
          law.head(
              LaidLine.feet(line.law().lengthM()),
              Speed.of(Unit.FOOT_PER_SECOND.fromSi(velocity), Unit.FOOT_PER_SECOND),
              speed));
    }
    return parts.size() == 1 ? parts.get(0) : sum(parts);
  }

  private static Computed<Length> sum(List<Computed<Length>> parts) {
    double feet = parts.stream().mapToDouble(p -> p.value().toFeet()).sum();
    return Computed.of(
        Length.ofFeet(feet),
        () -> {
          List<Term> terms = new ArrayList<>();
          List<String> symbols = new ArrayList<>();
          for (Computed<Length> part : parts) {
            String symbol = "h" + (terms.size() + 1);
            symbols.add(symbol);
            terms.add(
                Term.of(symbol, "suction line " + (terms.size() + 1), part.value(), Unit.FOOT));
          }
          return new Working(
              "Acceleration head in the suction lines",
              "h",
              String.join("+", symbols),
              terms,
              Unit.FOOT,
              Source.definition("sum over the lines"),
              parts.stream().map(Computed::working).toList());
        });
  }

  private static Acceleration law(InjectionPump.Plungers plungers) {
    double constant =
        switch (plungers) {
          case SIMPLEX -> Acceleration.SIMPLEX_SINGLE_ACTING;
          case DUPLEX -> Acceleration.DUPLEX_SINGLE_ACTING;
          case TRIPLEX -> Acceleration.TRIPLEX;
          case QUINTUPLEX -> Acceleration.QUINTUPLEX;
        };
    return new Acceleration(constant, Acceleration.WATER);
  }

  /** Where the pump stands above sea level; a round guess where nobody said. */
  private Length altitude(InjectionPump pump) {
    Optional<Elevation> datum = study.lease().site().altitude();
    return datum
        .map(d -> LaidLine.feet(d.metres() + study.survey().ground().metresUnder(pump)))
        .orElse(Defaults.ALTITUDE);
  }
}
