/**
 * What pressure it takes to push gas and liquid together through a line, over its hills.
 *
 * <p>Start at {@link tankyard.engine.pipes.gasliquid.GasLiquidLine}: made from a {@code LineLaw},
 * it marches from the end where the flow leaves up to its start and gives a {@link
 * tankyard.engine.pipes.gasliquid.GasLiquidMarch}: pressures, pattern and hold-up at every station,
 * and what went into lift, friction and speeding the gas up. {@link
 * tankyard.engine.pipes.gasliquid.BeggsBrill} is the gradient at one place.
 *
 * <pre>{@code
 * AbsolutePressure air = Atmosphere.at(altitudeM);
 * GasLiquidLine line = GasLiquidLine.of(LineLaw.of(runs));
 * GasLiquidMarch r = line.march(
 *     new GasLiquidFlow(liquidM3PerS, standardGasM3PerS),
 *     new GasLiquidFluids(liquid, gasModel, temperature, GasLiquidFluids.USUAL_TENSION),
 *     AbsolutePressure.of(separator, air), air);
 * r.upstream().gaugePascals(air);
 * }</pre>
 *
 * <p>SI; absolute pressures; flow from the line's start to its end only ({@code LineLaw.reversed()}
 * for the other way); heights up. Beggs and Brill 1973 with their revised pattern limits, with
 * Payne's factors (1979) if asked for. The gas's rate is at standard conditions; what the oil holds
 * at the pressure of a place ({@link tankyard.engine.pipes.gasliquid.Solution}) is not free there.
 * A step of the march changes the absolute pressure by half a per cent at most and takes the
 * gradient of its middle, so one step can be done by hand: {@link
 * tankyard.engine.pipes.gasliquid.GasLiquidWorking} writes out the one that costs most. A fall
 * never draws a vacuum.
 *
 * <p>More flow does not always ask for more pressure: uphill a slow line fills with liquid. So
 * these laws keep promises of their own instead of the single-liquid ones: hold-up between 0 and 1,
 * more friction at twice the flow within a pattern (not at every small step: the slip factor has a
 * notch), the single-liquid answer without gas and the gas's without liquid. A trace of liquid can
 * cost the gas up to 3.2 times its friction at once: that jump is the correlation's.
 *
 * <p>Left out: slug catchers, terrain slugs, temperature along the line. Immutable, thread-safe.
 * Checked in {@code GasLiquidCheckedTest}; the step written out in {@code GasLiquidWorkingTest}.
 */
package tankyard.engine.pipes.gasliquid;
