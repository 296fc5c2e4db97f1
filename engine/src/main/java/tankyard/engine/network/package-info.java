/**
 * How does the flow split, and what pressure stands at every joint?
 *
 * <p>Start at {@link tankyard.engine.network.NetworkSolver}: it takes a {@link
 * tankyard.engine.network.Network} of {@link tankyard.engine.network.Joint}s and {@link
 * tankyard.engine.network.Run}s and gives {@link tankyard.engine.network.Solved}, with an audit of
 * mass and energy. It knows no lease: a {@link tankyard.engine.network.Link} is any law that says
 * what pressure stands upstream of it. What hangs together how is a {@link
 * tankyard.engine.network.Layout}, made once; networks that differ in rates, laws and held
 * pressures share it, and inside it joints and runs are numbers, not ids.
 *
 * <p>SI: m3/s, gauge Pa. Flow is positive from a run's start to its end.
 *
 * <p>Trees are swept. Of a network with loops a {@link tankyard.engine.network.LoopPart} is taken
 * out: only it needs solving together, by Newton's method in global gradient form (Todini and
 * Pilati 1988, from memory) on a sparse matrix, ordered by approximate minimum degree and factored
 * by a library, setting out as if every run lost alike ({@link tankyard.engine.network.EvenStart});
 * in large grids a factor serves for some steps more, and where crests hold runs they are brought
 * to hold step by step ({@link tankyard.engine.network.LoopsOverHills}). What dangles from it is a
 * tree again, and swept. At the end the flows are balanced to the last digit, the pressures are
 * taken anew along the runs that rub least, and everything is added up again. What can't be solved
 * (no outlet, an island, every way shut) is {@link tankyard.engine.network.Unsolved}, which names
 * it.
 *
 * <p>Immutable inputs and results; no clock, no files. Checked in {@code LoopCheckedTest} against
 * published networks, in {@code NetworkPropertyTest} on random trees and loops and in {@code
 * GridTest} on grids.
 */
package tankyard.engine.network;
