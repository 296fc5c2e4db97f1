/**
 * What flows: how heavy and how thick oil, brine and both together are at a temperature.
 *
 * <p>Start at {@link tankyard.engine.fluids.FluidModel}, made from an {@link
 * tankyard.engine.fluids.OilSpec} (gravity, and measured viscosities if there are any), a {@link
 * tankyard.engine.fluids.BrineSpec} and an {@link tankyard.engine.fluids.EmulsionSpec}. It gives a
 * {@link tankyard.engine.fluids.LiquidState}: workings and cautions beside the bare {@link
 * tankyard.engine.fluids.Liquid} that flow laws take. {@code mix(oilRate, waterRate, temperature)}
 * takes rates in m3/s.
 *
 * <p>{@link tankyard.engine.fluids.FlowLaw} is the promise that every pressure loss keeps, whether
 * it is a pipe, a fitting or a valve: {@code drop(flow)} gives Pa and Pa per m3/s.
 *
 * <p>SI inside; gravities are against fresh water at 60 degF (999.016 kg/m3), also for a liquid
 * that is warmer or colder. Oil density by API MPMS 11.1 (1980, from memory). Oil viscosity: two or
 * more measured points by the ASTM D341 line; one point with the slope of Ng-Egbogah; none by
 * Ng-Egbogah 1983. Water by IAPWS, brine by Spivey-McCain-North and Mao-Duan, each from a table
 * with its source line. Oil-continuous mixtures by Guth-Simha, or by Pal-Rhodes where their
 * tightness is said. Out of range is a caution, never silence.
 *
 * <p>Gas: {@link tankyard.engine.fluids.GasModel} from a {@link tankyard.engine.fluids.GasSpec}
 * gives density and viscosity at an {@link tankyard.engine.fluids.AbsolutePressure}; {@link
 * tankyard.engine.fluids.Atmosphere} gives the air's, to be added to a gauge. {@link
 * tankyard.engine.fluids.LiveOil} is oil with gas in solution.
 *
 * <p>Left out: sour gas, how oil swells with gas, wax. Immutable, thread-safe. Uses {@code
 * numeric}, {@code units}, {@code working}. Checked in {@code FluidsCheckedTest}.
 */
package tankyard.engine.fluids;
