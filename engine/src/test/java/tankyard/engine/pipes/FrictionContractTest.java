package tankyard.engine.pipes;

import java.util.List;
import org.junit.jupiter.api.Nested;
import tankyard.engine.fluids.FlowLaw;
import tankyard.engine.fluids.FlowLawContract;
import tankyard.engine.fluids.Liquid;

class FrictionContractTest {
  private static final Liquid BRINE = new Liquid(1060, 1.1e-3);
  private static final Liquid COLD_EMULSION = new Liquid(930, 1.2);

  private static FlowLaw pipe(double roughnessM, MinorLosses minor, Liquid liquid) {
    return new PipeFlow(new PipeRun(0.0493, roughnessM, PipePath.straight(600, 9), minor), liquid);
  }

  @Nested
  class SmoothPlasticWithBrine implements FlowLawContract {
    @Override
    public FlowLaw law() {
      return pipe(1.5e-6, MinorLosses.NONE, BRINE);
    }
  }

  @Nested
  class PerfectlySmoothPipe implements FlowLawContract {
    @Override
    public FlowLaw law() {
      return pipe(0, MinorLosses.NONE, BRINE);
    }
  }

  @Nested
  class RoughSteelWithFittings implements FlowLawContract {
    @Override
    public FlowLaw law() {
      return pipe(2.4e-3, new MinorLosses(12, 14.5, 3000), BRINE);
    }
  }

  @Nested
  class OneFittingForThickLiquid implements FlowLawContract {
    @Override
    public FlowLaw law() {
      return fitting(new FittingLoss.ThreeK(800, 0.14, 4, 2), COLD_EMULSION);
    }
  }

  @Nested
  class OneFittingByItsLengthOverBore implements FlowLawContract {
    @Override
    public FlowLaw law() {
      return fitting(new FittingLoss.EquivalentDiameters(340), BRINE);
    }
  }

  @Nested
  class OneFittingAsMorePipe implements FlowLawContract {
    @Override
    public FlowLaw law() {
      return fitting(new FittingLoss.ExtraLength(17), BRINE);
    }
  }

  /** A fitting in so short a pipe that next to nothing else is lost. */
  private static FlowLaw fitting(FittingLoss fitting, Liquid liquid) {
    PipePath stub = PipePath.straight(0.01, 0);
    return new PipeFlow(new PipeRun(0.0493, 4.6e-5, stub, fitting.in(0.0493)), liquid);
  }

  @Nested
  class ColdEmulsion implements FlowLawContract {
    @Override
    public FlowLaw law() {
      return pipe(4.6e-5, MinorLosses.ofK(6), COLD_EMULSION);
    }
  }

  @Nested
  class TwoSizesInARow implements FlowLawContract {
    @Override
    public FlowLaw law() {
      PipeRun two = new PipeRun(0.0493, 4.6e-5, PipePath.straight(300, 2), MinorLosses.NONE);
      PipeRun three = new PipeRun(0.0727, 4.6e-5, PipePath.straight(500, 2), MinorLosses.NONE);
      return LineLaw.of(List.of(two, three)).friction(BRINE);
    }
  }

  @Nested
  class HazenAndWilliams implements FlowLawContract {
    @Override
    public FlowLaw law() {
      return new HazenWilliams(600, 0.0493, 140, 1.06);
    }
  }
}
