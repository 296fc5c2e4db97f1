/**
 * What every drawn picture of numbers needs: round ticks, a scale, and labels that stay clear of
 * each other.
 *
 * <p>Start at {@link tankyard.app.chart.Axis}: it takes the values to be shown and gives round ends
 * and round steps. {@link tankyard.app.chart.Scale} turns values into places on the screen. {@link
 * tankyard.app.chart.Flags} puts labels beside their marks, in as few lanes as will hold them.
 *
 * <p>Plain arithmetic without a scene; the nodes are made by the feature that draws, and coloured
 * by its style sheet. The colours of the pictures are those of Okabe and Ito, "Color Universal
 * Design" (2008), which stay apart for colour-blind eyes; none is used without a word or a pattern
 * beside it. Checked in {@code AxisTest} and {@code FlagsTest}.
 */
package tankyard.app.chart;
