/**
 * What pressure it takes to push one liquid through a line, over its hills.
 *
 * <p>Start at {@link tankyard.engine.pipes.LineLaw}: made from {@link
 * tankyard.engine.pipes.PipeRun}s (bore, wall roughness, {@link tankyard.engine.pipes.PipePath},
 * {@link tankyard.engine.pipes.MinorLosses}); {@code march(flow, liquid, downstreamPascals)} walks
 * up from the end where the liquid leaves and gives a {@link tankyard.engine.pipes.MarchResult}:
 *
 * <pre>{@code
 * PipePath path = PipePath.of(distanceM, elevationM);
 * MinorLosses minor = MinorLosses.of(fittings, boreM);             // or MinorLosses.ofExtraLength(12)
 * LineLaw line = LineLaw.of(new PipeRun(boreM, roughnessM, path, minor));
 * MarchResult r = line.march(flowM3PerS, liquid, downstreamGaugePascals);
 * r.upstreamPascals(); r.upstreamPerFlow(); r.upstreamPerDownstream();
 * r.control();                       // the high point that governs, or empty
 * r.siphonUpstreamPascals();         // the naive answer that trusts the siphon
 * new LineWorking(line, flowM3PerS, liquid, r).friction();          // Computed<Pressure>
 * line.friction(liquid).drop(flow);  // friction alone: Pa and Pa per m3/s, odd in the flow
 * }</pre>
 *
 * <p>SI doubles; elevations up; gauge pressures; flow positive from a line's start to its end, and
 * a negative flow is marched the other way ({@code downstream} is always where the liquid leaves).
 * At and beyond a point where the pressure would fall below that of the air, the line is taken to
 * run part full: no siphon is ever credited. {@code upstreamPerFlow} is zero where the start itself
 * is that point.
 *
 * <p>Friction: Darcy-Weisbach with {@link tankyard.engine.pipes.FrictionFactor} (64/Re to Re 2000,
 * Colebrook 1939 from Re 4000, a smooth cubic between). {@link tankyard.engine.pipes.HazenWilliams}
 * for water beside it. Fittings by Crane L/D, a fixed K, extra length or Darby's three constants:
 * {@link tankyard.engine.pipes.FittingLoss}.
 *
 * <p>Gas and liquid together: {@code pipes.gasliquid}. Lines that cool: {@code LineCooling}; that
 * gelled: {@code GelRestart}. Left out: water hammer, what pipe stands (the catalogue) and where
 * the ground lies (terrain). Immutable, thread-safe. Uses {@code fluids}. Checked in {@code
 * PipesCheckedTest}; every law passes {@code FlowLawContract}.
 */
package tankyard.engine.pipes;
