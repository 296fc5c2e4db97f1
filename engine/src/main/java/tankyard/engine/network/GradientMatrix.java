package tankyard.engine.network;

import edu.emory.mathcs.csparsej.tdouble.Dcs_chol;
import edu.emory.mathcs.csparsej.tdouble.Dcs_common.Dcs;
import edu.emory.mathcs.csparsej.tdouble.Dcs_common.Dcsn;
import edu.emory.mathcs.csparsej.tdouble.Dcs_common.Dcss;
import edu.emory.mathcs.csparsej.tdouble.Dcs_compress;
import edu.emory.mathcs.csparsej.tdouble.Dcs_dupl;
import edu.emory.mathcs.csparsej.tdouble.Dcs_entry;
import edu.emory.mathcs.csparsej.tdouble.Dcs_ipvec;
import edu.emory.mathcs.csparsej.tdouble.Dcs_lsolve;
import edu.emory.mathcs.csparsej.tdouble.Dcs_ltsolve;
import edu.emory.mathcs.csparsej.tdouble.Dcs_lusol;
import edu.emory.mathcs.csparsej.tdouble.Dcs_pvec;
import edu.emory.mathcs.csparsej.tdouble.Dcs_schol;
import edu.emory.mathcs.csparsej.tdouble.Dcs_transpose;
import edu.emory.mathcs.csparsej.tdouble.Dcs_util;
import java.util.Arrays;

/**
 * The matrix of the free joints' pressures: an entry for every joint and for both directions of
 * every run between two free joints. Its pattern never changes in a solve, so it is laid out and
 * ordered once: approximate minimum degree (Davis' CSparse, as the library CSparseJ has it) keeps
 * the fill low. While no crest cuts a run it is symmetric and positive definite and Cholesky's
 * factors do; else it is factored as L U.
 */
final class GradientMatrix {
  private static final int MINIMUM_DEGREE = 1;
  private static final double PIVOT_TOLERANCE = 0.1;

  private final Dcs matrix;
  private final int[] diagonal;
  private final int[] fromRow;
  private final int[] toRow;
  private final double[] work;
  private Dcss order;
  private boolean symmetric = true;

  GradientMatrix(Topology net, int free) {
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
    matrix = sortedRows(packed);
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
    work = new double[n];
  }

  private static boolean between(Topology net, int free, int run) {
    return net.from(run) < free && net.to(run) < free;
  }

  /** Transposing twice leaves every column's rows in order, so that entries can be looked up. */
  private static Dcs sortedRows(Dcs packed) {
    return Dcs_transpose.cs_transpose(Dcs_transpose.cs_transpose(packed, true), true);
  }

  private int place(int row, int column) {
    int found = Arrays.binarySearch(matrix.i, matrix.p[column], matrix.p[column + 1], row);
    if (found < 0) {
      throw new IllegalStateException("no entry at " + row + ", " + column);
    }
    return found;
  }

  void clear() {
    Arrays.fill(matrix.x, 0);
    symmetric = true;
  }

  void addDiagonal(int joint, double value) {
    matrix.x[diagonal[joint]] += value;
  }

  /**
   * Adds a run's entry in the row of one end and the column of the other.
   *
   * @param rowIsFrom whether it is the row of the run's start
   */
  void addAcross(int run, boolean rowIsFrom, double value) {
    matrix.x[rowIsFrom ? fromRow[run] : toRow[run]] += value;
  }

  /** Says that a crest cuts a run, so that the matrix is no longer symmetric. */
  void breakSymmetry() {
    symmetric = false;
  }

  /** Solves in place; false where there is no single answer. */
  boolean solve(double[] right) {
    return symmetric
        ? cholesky(right)
        : Dcs_lusol.cs_lusol(MINIMUM_DEGREE, matrix, right, PIVOT_TOLERANCE);
  }

  private boolean cholesky(double[] right) {
    if (order == null) {
      order = Dcs_schol.cs_schol(MINIMUM_DEGREE, matrix);
    }
    Dcsn factor = Dcs_chol.cs_chol(matrix, order);
    if (factor == null) {
      return false;
    }
    int n = matrix.n;
    Dcs_ipvec.cs_ipvec(order.pinv, right, work, n);
    Dcs_lsolve.cs_lsolve(factor.L, work);
    Dcs_ltsolve.cs_ltsolve(factor.L, work);
    Dcs_pvec.cs_pvec(order.pinv, work, right, n);
    return true;
  }
}
