package tankyard.engine.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import tankyard.engine.catalog.Pipe;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.pipes.MinorLosses;
import tankyard.engine.pipes.PipePath;
import tankyard.engine.pipes.PipeRun;
import tankyard.engine.pipes.RunLoss;
import tankyard.engine.tanks.Overflow;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Unit;
import tankyard.engine.vessels.GunBarrelLeg;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * The leg of one gun barrel in one case, in any size of pipe.
 *
 * @param weir height it stands at
 * @param surge m3/s through it
 */
record GunBarrelLegs(GunBarrel barrel, Length weir, CaseStudy study, double surge) {
  private static final int SIZES_UP = 2;
  private static final Source HEAD = Source.definition("head is pressure over weight");

  /** What stands over the weir where the way to the tank backs up, with the loss in the leg. */
  Computed<Length> interfaceFor(Length lossAndBackUp) {
    return balance(lossAndBackUp).interfaceFor(weir);
  }

  private GunBarrelLeg balance(Length loss) {
    Gravity oil = study.oil().gravity().value();
    return new GunBarrelLeg(barrel.oilOutletHeight(), oil, study.brine().gravity().value(), loss);
  }

  /** Head lost up to the weir. */
  Computed<Length> loss(Pipe pipe) {
    return head(run(pipe), brine(), surge, "Head lost in the leg");
  }

  /** Head lost in one run of pipe, in feet of what runs in it. */
  static Computed<Length> head(PipeRun run, Liquid liquid, double rate, String title) {
    RunLoss loss = new RunLoss(run, liquid, rate);
    return head(
        loss.friction().value().pascals(),
        liquid,
        title,
        HEAD,
        () -> List.of(loss.friction().working()));
  }

  /** A loss in feet of what runs. */
  static Computed<Length> head(
      double frictionPa,
      Liquid liquid,
      String title,
      Source source,
      Supplier<List<Working>> frictions) {
    return Computed.of(
        Length.ofFeet(Unit.FOOT.fromSi(frictionPa / liquid.staticPascals(1))),
        () ->
            Working.of(
                    title,
                    "hl",
                    "f/(0.433101*SG)",
                    Unit.FOOT,
                    source,
                    Term.of("f", "line loss", Unit.PSI.fromSi(frictionPa), Unit.PSI),
                    Term.number("SG", "gravity of what runs", liquid.specificGravity()))
                .from(frictions.get()));
  }

  private PipeRun run(Pipe pipe) {
    double length = Defaults.legLength(barrel, weir).metres();
    return new PipeRun(
        pipe.bore().metres(),
        pipe.roughness().metres(),
        PipePath.straight(length, 0),
        MinorLosses.NONE);
  }

  private Liquid brine() {
    return study.brine().liquid();
  }

  /** The rate at which the water inside would reach the oil outlet: the leg has no head left. */
  Computed<LiquidRate> most(Pipe pipe) {
    double headM = Math.max(0, barrel.oilOutletHeight().metres() - weir.metres());
    PipeRun run = run(pipe);
    LegCapacity capacity = new LegCapacity(run, brine(), headM);
    return capacity.rate();
  }

  Computed<LiquidRate> downcomer(Pipe pipe) {
    return new Overflow(pipe.bore()).selfVenting();
  }

  /** The pipe as drawn and the next ones up, each as leg, as downcomer and as way to the tank. */
  List<GunBarrelResult.Size> sizes(Pipe drawn, Optional<LegRun> toTank) {
    List<Pipe> pipes = new ArrayList<>(List.of(drawn));
    study.survey().catalog().list(Pipe.class).stream()
        .filter(p -> p.material() == drawn.material())
        .filter(p -> p.nominal().compareTo(drawn.nominal()) > 0)
        .filter(p -> p.bore().metres() > drawn.bore().metres())
        .sorted(
            Comparator.comparing(Pipe::nominal)
                .thenComparingDouble(p -> Math.abs(wall(p) - wall(drawn))))
        .forEach(p -> addOnePerSize(p, pipes));
    return pipes.stream().limit(1 + SIZES_UP).map(p -> size(p, toTank)).toList();
  }

  private static void addOnePerSize(Pipe pipe, List<Pipe> pipes) {
    if (pipes.stream().noneMatch(p -> p.nominal().compareTo(pipe.nominal()) == 0)) {
      pipes.add(pipe);
    }
  }

  private static double wall(Pipe pipe) {
    return pipe.outside().metres() / pipe.bore().metres();
  }

  private GunBarrelResult.Size size(Pipe pipe, Optional<LegRun> toTank) {
    Computed<Length> loss = loss(pipe);
    return new GunBarrelResult.Size(
        pipe.id(),
        pipe.name(),
        loss,
        interfaceFor(loss.value()),
        downcomer(pipe),
        toTank.filter(t -> t.runs().size() == 1).map(t -> onTheWay(pipe, t)));
  }

  private static Computed<Length> onTheWay(Pipe pipe, LegRun toTank) {
    PipeRun drawn = toTank.runs().get(0).laid().law().runs().get(0);
    PipeRun other =
        new PipeRun(pipe.bore().metres(), pipe.roughness().metres(), drawn.path(), drawn.minor());
    return head(other, toTank.liquid().liquid(), toTank.rate(), "Head lost on the way to the tank");
  }
}
