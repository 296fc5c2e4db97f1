package tankyard.engine.network;

import edu.emory.mathcs.csparsej.tdouble.Dcs_chol;
import edu.emory.mathcs.csparsej.tdouble.Dcs_common.Dcs;
import edu.emory.mathcs.csparsej.tdouble.Dcs_common.Dcsn;
import edu.emory.mathcs.csparsej.tdouble.Dcs_lsolve;
import edu.emory.mathcs.csparsej.tdouble.Dcs_ltsolve;
import edu.emory.mathcs.csparsej.tdouble.Dcs_lusol;
import java.util.Arrays;

/**
 * The matrix of the free joints' pressures. While no crest cuts a run it is symmetric and positive
 * definite and Cholesky's factors do; else it is factored as L U.
 */
final class GradientMatrix {
  private static final double PIVOT_TOLERANCE = 0.1;

  private final GradientPattern pattern;
  private final Dcs matrix;
  private boolean symmetric = true;

  GradientMatrix(GradientPattern pattern) {
    this.pattern = pattern;
    matrix = pattern.empty();
  }

  void clear() {
    Arrays.fill(matrix.x, 0);
    symmetric = true;
  }

  void addDiagonal(int joint, double value) {
    matrix.x[pattern.diagonal(joint)] += value;
  }

  /**
   * Adds a run's entry in the row of one end and the column of the other.
   *
   * @param rowIsFrom whether it is the row of the run's start
   */
  void addAcross(int run, boolean rowIsFrom, double value) {
    matrix.x[pattern.across(run, rowIsFrom)] += value;
  }

  /** Says that a crest cuts a run, so that the matrix is no longer symmetric. */
  void breakSymmetry() {
    symmetric = false;
  }

  /** Solves in place; false where there is no single answer. */
  boolean solve(double[] right) {
    return symmetric
        ? cholesky(right)
        : Dcs_lusol.cs_lusol(GradientPattern.MINIMUM_DEGREE, matrix, right, PIVOT_TOLERANCE);
  }

  private boolean cholesky(double[] right) {
    Dcsn factor = Dcs_chol.cs_chol(matrix, pattern.order());
    if (factor == null) {
      return false;
    }
    Dcs_lsolve.cs_lsolve(factor.L, right);
    Dcs_ltsolve.cs_ltsolve(factor.L, right);
    return true;
  }
}
