package tankyard.engine.network;

import edu.emory.mathcs.csparsej.tdouble.Dcs_chol;
import edu.emory.mathcs.csparsej.tdouble.Dcs_common.Dcs;
import edu.emory.mathcs.csparsej.tdouble.Dcs_common.Dcsn;
import edu.emory.mathcs.csparsej.tdouble.Dcs_common.Dcss;
import edu.emory.mathcs.csparsej.tdouble.Dcs_ipvec;
import edu.emory.mathcs.csparsej.tdouble.Dcs_lsolve;
import edu.emory.mathcs.csparsej.tdouble.Dcs_ltsolve;
import edu.emory.mathcs.csparsej.tdouble.Dcs_lu;
import edu.emory.mathcs.csparsej.tdouble.Dcs_sqr;
import edu.emory.mathcs.csparsej.tdouble.Dcs_usolve;
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
  private Factor factor;

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

  boolean isSymmetric() {
    return symmetric;
  }

  /** Makes the factor; false where there is no single answer. */
  boolean factor() {
    factor = symmetric ? cholesky() : lu();
    return factor != null;
  }

  /** Solves in place, with the factor that was made last. */
  void solve(double[] right) {
    factor.solve(right);
  }

  private Factor cholesky() {
    Dcsn made = Dcs_chol.cs_chol(matrix, pattern.order());
    if (made == null) {
      return null;
    }
    return right -> {
      Dcs_lsolve.cs_lsolve(made.L, right);
      Dcs_ltsolve.cs_ltsolve(made.L, right);
    };
  }

  private Factor lu() {
    Dcss order = Dcs_sqr.cs_sqr(GradientPattern.MINIMUM_DEGREE, matrix, false);
    Dcsn made = Dcs_lu.cs_lu(matrix, order, PIVOT_TOLERANCE);
    if (made == null) {
      return null;
    }
    return right -> {
      double[] turned = new double[right.length];
      Dcs_ipvec.cs_ipvec(made.pinv, right, turned, right.length);
      Dcs_lsolve.cs_lsolve(made.L, turned);
      Dcs_usolve.cs_usolve(made.U, turned);
      Dcs_ipvec.cs_ipvec(order.q, turned, right, right.length);
    };
  }

  /** A matrix in factors. */
  private interface Factor {
    void solve(double[] right);
  }
}
