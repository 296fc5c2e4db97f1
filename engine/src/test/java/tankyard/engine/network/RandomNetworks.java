package tankyard.engine.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import tankyard.engine.fluids.FlowLaw;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.network.elements.CheckValve;
import tankyard.engine.network.elements.Regulator;
import tankyard.engine.pipes.LineLaw;
import tankyard.engine.pipes.MarchResult;
import tankyard.engine.pipes.MinorLosses;
import tankyard.engine.pipes.PipePath;
import tankyard.engine.pipes.PipeRun;

/**
 * Draws networks: one well to five hundred, trees and loops, hills, tiny and huge pipe, wells that
 * make nothing, valves that are shut, check valves and regulators; and keeps count of what it drew.
 */
final class RandomNetworks {
  private static final Liquid BRINE = new Liquid(1040, 1.1e-3);

  private final Random random;
  private int drawn;
  private int withLoops;
  private int oneWell;
  private int fiveHundred;
  private int stillLines;
  private int highWells;
  private int tinyPipes;
  private int hugePipes;
  private int hillyLines;
  private int withShut;
  private int withElements;
  private int solvedTrees;
  private int solvedLoops;
  private int cutOff;
  private int givenUp;

  RandomNetworks(Random random) {
    this.random = random;
  }

  /** A network with its number and what was put into it. */
  record Drawn(int number, Network network, boolean loops, boolean shut, boolean elements) {
    @Override
    public String toString() {
      return "network " + number + " of " + network.layout().joints().size() + " joints";
    }
  }

  /** What was drawn and what became of it. */
  record Mix(String words, int solvedTrees, int solvedLoops, int givenUp) {
    @Override
    public String toString() {
      return words;
    }
  }

  Drawn next() {
    int number = drawn++;
    int size = size(number);
    boolean loops = random.nextBoolean();
    boolean shut = random.nextInt(10) == 0;
    boolean elements = random.nextInt(3) == 0;
    boolean hills = random.nextInt(3) == 0;
    List<Joint> joints = new ArrayList<>();
    double[] heightM = new double[size + 1];
    double heldPa = 5e4 + random.nextDouble() * 3e5;
    joints.add(Joint.held("S", heldPa));
    // As high as the held pressure lifts the liquid: a line at rest up to more stands part full.
    double highestM = 0.8 * heldPa / BRINE.staticPascals(1);
    List<Run> runs = new ArrayList<>();
    for (int i = 1; i <= size; i++) {
      joints.add(Joint.free("J" + i, inflow() * Math.min(1, 30.0 / size)));
      // In loops the rises must add up to nothing, so they come from heights of the joints.
      heightM[i] = random.nextBoolean() ? 0 : -20 + (20 + highestM) * random.nextDouble();
      int inner =
          random.nextInt(5) == 0 ? random.nextInt(i) : i - 1 - random.nextInt(Math.min(i, 4));
      if (elements && random.nextInt(6) == 0) {
        heightM[i] = heightM[inner];
        runs.add(new Run("L" + runs.size(), name(i), name(inner), element()));
      } else {
        runs.add(run(runs.size(), i, inner, heightM, shut, hills));
      }
    }
    if (!loops) {
      joints.add(Joint.free("J" + (size + 1), 1e-5));
      highWells++;
      runs.add(new Run("L" + runs.size(), "J" + (size + 1), "S", pipe(200, bore(), -60)));
    }
    for (int i = 0; loops && i < 1 + size / 15; i++) {
      int a = 1 + random.nextInt(size);
      runs.add(run(runs.size(), a, random.nextInt(a), heightM, shut, hills));
    }
    return new Drawn(number, Network.of(joints, runs), loops, shut, elements);
  }

  private int size(int number) {
    if (number % 100 == 0) {
      return 500;
    }
    return number % 20 == 1 ? 1 : 1 + random.nextInt(30);
  }

  private double inflow() {
    return random.nextInt(4) == 0 ? 0 : Math.pow(10, -6 + 3 * random.nextDouble());
  }

  private Run run(int id, int a, int b, double[] heightM, boolean shut, boolean hills) {
    String from = name(a);
    String to = name(b);
    if (shut && random.nextInt(30) == 0) {
      return new Run("L" + id, from, to, Shut.VALVE);
    }
    double length = Math.pow(10, 3 * random.nextDouble());
    boolean turned = random.nextBoolean();
    double rise = turned ? heightM[a] - heightM[b] : heightM[b] - heightM[a];
    Link pipe =
        hills && random.nextBoolean() ? overHills(length, rise) : pipe(length, bore(), rise);
    return turned ? new Run("L" + id, to, from, pipe) : new Run("L" + id, from, to, pipe);
  }

  /** Two to four tops and hollows on the way, up to twenty metres high and ten deep. */
  private Link overHills(double length, double rise) {
    hillyLines++;
    int points = 4 + random.nextInt(3);
    double[] distanceM = new double[points];
    double[] heightM = new double[points];
    for (int i = 0; i < points; i++) {
      double along = (double) i / (points - 1);
      distanceM[i] = length * along;
      boolean end = i == 0 || i == points - 1;
      heightM[i] = rise * along + (end ? 0 : -10 + 30 * random.nextDouble());
    }
    return pipe(PipePath.of(distanceM, heightM), bore());
  }

  private static String name(int joint) {
    return joint == 0 ? "S" : "J" + joint;
  }

  private double bore() {
    int kind = random.nextInt(20);
    if (kind == 0) {
      tinyPipes++;
      return 0.012;
    }
    if (kind == 1) {
      hugePipes++;
      return 0.6;
    }
    return 0.03 + 0.12 * random.nextDouble();
  }

  private Link element() {
    FlowLaw open = FlowLaw.quadratic(1e9 * (1 + 9 * random.nextDouble()));
    return random.nextBoolean()
        ? new CheckValve(open)
        : new Regulator(1e5 * (1 + random.nextDouble()), 1e7, open);
  }

  static Link pipe(double length, double bore, double rise) {
    return pipe(PipePath.straight(length, rise), bore);
  }

  private static Link pipe(PipePath path, double bore) {
    LineLaw law = LineLaw.of(new PipeRun(bore, 4.6e-5, path, MinorLosses.ofK(1.5)));
    return (flow, downstream) -> {
      MarchResult march = law.march(flow, BRINE, downstream);
      return new Link.Upstream(
          march.upstreamPascals(), march.upstreamPerFlow(), march.upstreamPerDownstream());
    };
  }

  void count(Drawn network, Optional<Solved> solved) {
    withLoops += network.loops() ? 1 : 0;
    withShut += network.shut() ? 1 : 0;
    withElements += network.elements() ? 1 : 0;
    oneWell += network.network().layout().joints().size() <= 3 ? 1 : 0;
    fiveHundred += network.network().layout().joints().size() > 500 ? 1 : 0;
    if (solved.isPresent()) {
      solvedTrees += network.network().layout().isTree() ? 1 : 0;
      solvedLoops += network.network().layout().isTree() ? 0 : 1;
      for (double flow : solved.get().flows()) {
        stillLines += Math.abs(flow) < 1e-12 ? 1 : 0;
      }
    } else {
      cutOff += network.network().cutOff().isEmpty() ? 0 : 1;
      givenUp += network.network().cutOff().isEmpty() ? 1 : 0;
    }
  }

  Mix mix() {
    String words =
        "%d networks: %d drawn with loops, %d with a well or two, %d with five hundred; %d lines at rest,"
            + " %d wells high above the outlet, %d tiny pipes, %d huge ones, %d lines over hills; %d drawn with shut valves, %d with check valves and"
            + " regulators. %d trees and %d loops solved; %d cut off by what is shut, %d loops"
            + " given up by name";
    return new Mix(
        String.format(
            words,
            drawn,
            withLoops,
            oneWell,
            fiveHundred,
            stillLines,
            highWells,
            tinyPipes,
            hugePipes,
            hillyLines,
            withShut,
            withElements,
            solvedTrees,
            solvedLoops,
            cutOff,
            givenUp),
        solvedTrees,
        solvedLoops,
        givenUp);
  }
}
