package tankyard.engine.network;

/**
 * Joints, each after the one its tree run leads to, with that run: laid out row by row, so that
 * pressures are swept along them without looking anything up.
 *
 * @param outer the joint
 * @param inner the joint its run leads to
 * @param run {@link SpanningTree#NONE} where the outer joint is held
 * @param leadsIn whether the run was drawn from the outer joint to the inner one
 */
record Ways(int[] outer, int[] inner, int[] run, boolean[] leadsIn) {

  /**
   * The ways to some joints.
   *
   * @param towardsHeld of every joint, the run that leads it to a held one
   */
  static Ways to(int[] outer, Topology topology, int[] towardsHeld) {
    int[] run = new int[outer.length];
    int[] inner = new int[outer.length];
    boolean[] leadsIn = new boolean[outer.length];
    for (int k = 0; k < outer.length; k++) {
      run[k] = towardsHeld[outer[k]];
      if (run[k] != SpanningTree.NONE) {
        inner[k] = topology.otherEnd(run[k], outer[k]);
        leadsIn[k] = topology.from(run[k]) == outer[k];
      }
    }
    return new Ways(outer, inner, run, leadsIn);
  }
}
