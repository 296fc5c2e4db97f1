/**
 * What it costs.
 *
 * <p>Start at {@link tankyard.engine.pricing.Pricing#price}: a takeoff, the lease's quotes and a
 * price list give a {@link tankyard.engine.pricing.Bill}.
 *
 * <p>A quote beats the price list. A quote covers kinds of takeoff line or single items. A lot
 * prices everything it covers once. A price by the foot, each and so on is multiplied by what is
 * drawn, with the quote's own waste; what usually comes with the thing, or is counted in another
 * unit, is in that price. A quote with a quantity of its own is multiplied by that. Where two
 * quotes cover a line, the one that names the item goes first, then the one that stands first; a
 * quote that is left with nothing is listed as not used, with the reason.
 *
 * <p>What has no price is a missing price and never a price of nothing: the total says how many
 * lines it is without. A price a year old or more is stale, and an invented one says so. What is
 * there already costs nothing and has a column of its own: what it would cost at the price list.
 *
 * <p>Money is decimal, half up to the cent, quantities to the hundredth, so that what is printed
 * multiplies out. One currency: a price in another is not used. The date comes from outside; there
 * is no clock here. Contingency is on goods and work, tax on goods.
 */
package tankyard.engine.pricing;
