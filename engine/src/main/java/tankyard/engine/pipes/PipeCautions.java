package tankyard.engine.pipes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Figures;
import tankyard.engine.working.Caution;

/** What must be said with a pipe's friction. */
public final class PipeCautions {
  private PipeCautions() {}

  static List<Caution> of(PipeRun run, FlowState state) {
    List<Caution> said = new ArrayList<>();
    if (state.regime() == FlowRegime.TRANSITION) {
      said.add(
          new Caution(
              "flow-in-transition",
              "At Reynolds number "
                  + Figures.significant(state.reynolds(), 3)
                  + " the flow is neither laminar nor turbulent (2000 to 4000): the friction can"
                  + " jump by half either way."));
    }
    ofWall(run).ifPresent(said::add);
    if (state.regime() == FlowRegime.LAMINAR && run.minor().k() > 0) {
      said.add(
          new Caution(
              "fittings-in-laminar-flow",
              "The flow is laminar (Reynolds number "
                  + Figures.significant(state.reynolds(), 3)
                  + "), where fittings cost more than their K for turbulent flow says."));
    }
    return said;
  }

  /** What holds whatever flows in it. */
  public static Optional<Caution> ofWall(PipeRun run) {
    if (run.relativeRoughness() <= PipeRun.ROUGHEST) {
      return Optional.empty();
    }
    return Optional.of(
        new Caution(
            "wall-very-rough",
            "The wall's roughness is "
                + Figures.significant(run.relativeRoughness(), 3)
                + " of the bore, more than the 0.05 the friction law was drawn for; check it."));
  }
}
