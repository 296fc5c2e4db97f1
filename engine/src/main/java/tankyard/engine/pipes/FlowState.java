package tankyard.engine.pipes;

/**
 * How the liquid moves through one run.
 *
 * @param velocityMPerS with the sign of the flow
 * @param frictionFactor Darcy's; zero where nothing moves
 */
public record FlowState(
    double velocityMPerS, double reynolds, FlowRegime regime, double frictionFactor) {
  static final FlowState STILL = new FlowState(0, 0, FlowRegime.STILL, 0);
}
