package tankyard.engine.fluids;

import org.junit.jupiter.api.Nested;

/** An orifice's square law, alone and one after another. */
class RestrictionContractTest {
  @Nested
  class One implements FlowLawContract {
    @Override
    public FlowLaw law() {
      return FlowLaw.quadratic(4e9);
    }
  }

  @Nested
  class TwoInARow implements FlowLawContract {
    @Override
    public FlowLaw law() {
      return FlowLaw.quadratic(4e9).then(FlowLaw.quadratic(7e7));
    }
  }
}
