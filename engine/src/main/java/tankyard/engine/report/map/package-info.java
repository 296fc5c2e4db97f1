/**
 * How does the lease look from above, on a page somebody prints?
 *
 * <p>Start at {@link tankyard.engine.report.map.LeaseMap}: one drawing routine on a Java {@link
 * java.awt.Graphics2D}, written as SVG through the Batik library or painted into a PNG. {@link
 * tankyard.engine.report.map.Page} lays the page out, {@link tankyard.engine.report.map.Sheet}
 * draws one framed piece of map (the lease, or a crowded corner of it enlarged) in layers: ground,
 * berm, lines, things, labels.
 *
 * <p>Ground: contours and tints of the flat triangles between known heights, the same ones that
 * pipes are laid on; outside them nothing is drawn, since nothing is known. Lines: a colour of the
 * palette of Okabe and Ito (Color Universal Design, 2008) and a dash of its own for each service,
 * so that neither colour nor dash stands alone; thick if new, thin if there already. Things stand
 * to scale where that can be seen and at a smallest size elsewhere. Labels are placed one after the
 * other where no other label, thing or line lies, with a leader if need be.
 *
 * <p>Map coordinates in metres east and north, page coordinates in points right and down. No screen
 * is needed, no file is written, and the same lease gives the same picture.
 */
package tankyard.engine.report.map;
