package tankyard.engine.network;

import edu.emory.mathcs.csparsej.tdouble.Dcs_common.Dcs;
import edu.emory.mathcs.csparsej.tdouble.Dcs_common.Dcss;
import edu.emory.mathcs.csparsej.tdouble.Dcs_compress;
import edu.emory.mathcs.csparsej.tdouble.Dcs_dupl;
import edu.emory.mathcs.csparsej.tdouble.Dcs_entry;
import edu.emory.mathcs.csparsej.tdouble.Dcs_schol;
import edu.emory.mathcs.csparsej.tdouble.Dcs_transpose;
import edu.emory.mathcs.csparsej.tdouble.Dcs_util;
import java.util.Arrays;

/**
 * Where the entries of the free joints' pressures stand: one for every joint and for both
 * directions of every run between two free joints. It is laid out and ordered once for a layout:
 * approximate minimum degree (Davis' CSparse, as the library CSparseJ has it) keeps the fill low.
 */
final class GradientPattern {
  static final int MINIMUM_DEGREE = 1;

  /** The joints are numbered in the order of the factor already. */
  private static final int NATURAL = 0;

  /** Counted pairs for a counted step; a grid of some four thousand runs. */
  private static final double DEAR = 2;

  private final Dcs entries;
  private final int[] diagonal;
  private final int[] fromRow;
  private final int[] toRow;
  private final Dcss order;

  GradientPattern(Topology net, int free) {
    int n = free;
    Dcs triplets = Dcs_util.cs_spalloc(n, n, n + 2 * net.runs(), true, true);
    for (int j = 0; j < n; j++) {
      Dcs_entry.cs_entry(triplets, j, j, 0);
    }
    for (int i = 0; i < net.runs(); i++) {
      if (between(net, free, i)) {
        Dcs_entry.cs_entry(triplets, net.from(i), net.to(i), 0);
        Dcs_entry.cs_entry(triplets, net.to(i), net.from(i), 0);
      }
    }
    Dcs packed = Dcs_compress.cs_compress(triplets);
    Dcs_dupl.cs_dupl(packed);
    entries = sortedRows(packed);
    diagonal = new int[n];
    for (int j = 0; j < n; j++) {
      diagonal[j] = place(j, j);
    }
    fromRow = new int[net.runs()];
    toRow = new int[net.runs()];
    for (int i = 0; i < net.runs(); i++) {
      fromRow[i] = between(net, free, i) ? place(net.from(i), net.to(i)) : -1;
      toRow[i] = between(net, free, i) ? place(net.to(i), net.from(i)) : -1;
    }
    order = Dcs_schol.cs_schol(NATURAL, entries);
  }

  /**
   * New numbers for the free joints, in the order in which a factor of them fills in least
   * (approximate minimum degree).
   */
  static int[] leastFill(Topology net, int free) {
    return Dcs_schol.cs_schol(MINIMUM_DEGREE, new GradientPattern(net, free).entries).pinv;
  }

  private static boolean between(Topology net, int free, int run) {
    return net.from(run) < free && net.to(run) < free;
  }

  /** Transposing twice leaves every column's rows in order, so that entries can be looked up. */
  private static Dcs sortedRows(Dcs packed) {
    return Dcs_transpose.cs_transpose(Dcs_transpose.cs_transpose(packed, true), true);
  }

  private int place(int row, int column) {
    int found = Arrays.binarySearch(entries.i, entries.p[column], entries.p[column + 1], row);
    if (found < 0) {
      throw new IllegalStateException("no entry at " + row + ", " + column);
    }
    return found;
  }

  /** A matrix with nothing in these entries yet. */
  Dcs empty() {
    Dcs matrix = new Dcs();
    matrix.m = entries.m;
    matrix.n = entries.n;
    matrix.nz = entries.nz;
    matrix.nzmax = entries.nzmax;
    matrix.p = entries.p;
    matrix.i = entries.i;
    matrix.x = new double[entries.x.length];
    return matrix;
  }

  /** The order of a Cholesky factor and what it lets one foresee. */
  Dcss order() {
    return order;
  }

  /**
   * Whether making a factor costs several steps with one: it multiplies every pair of entries of a
   * column, where a step meets every entry and every run a few times. On a grid of ten thousand
   * runs it costs five to nine of them, on a gathering network of any size not one.
   */
  boolean isFactorDear() {
    double pairs = 0;
    for (int j = 0; j < diagonal.length; j++) {
      double entries = order.cp[j + 1] - order.cp[j];
      pairs += entries * entries / 2;
    }
    return pairs > DEAR * (4.0 * order.cp[diagonal.length] + 15.0 * fromRow.length);
  }

  /** Place of a joint's own entry. */
  int diagonal(int joint) {
    return diagonal[joint];
  }

  /** Place of a run's entry in the row of one end and the column of the other. */
  int across(int run, boolean rowIsFrom) {
    return rowIsFrom ? fromRow[run] : toRow[run];
  }
}
