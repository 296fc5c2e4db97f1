/**
 * How high is the ground here, and how does it run along this route?
 *
 * <p>Start at {@link tankyard.engine.terrain.Ground}: made from every known height of a lease, it
 * gives the height at a place and the {@link tankyard.engine.terrain.Station}s along a route. Since
 * the ground is made of flat triangles, a profile is exact between its stations: no crest can hide
 * between two samples.
 *
 * <p>{@link tankyard.engine.terrain.Outline} is a shape drawn on it, a berm's inside or a creek:
 * its area, what it holds, how far off it is.
 *
 * <p>SI, metres east and north of the datum, elevations up positive. Triangulation and shapes by
 * the JTS library. Out of scope: how deep the pipe lies ({@code study}), ground water, rock.
 *
 * <p>Immutable and thread-safe. Checked in {@code GroundTest} against planes and ridges whose
 * heights are known, and in {@code OutlineTest}.
 */
package tankyard.engine.terrain;
