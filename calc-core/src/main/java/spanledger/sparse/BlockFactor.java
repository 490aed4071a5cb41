package spanledger.sparse;

import java.util.Arrays;

/**
 * The factors L D Lᵀ of a symmetric matrix, which need not be positive definite: the signs of D
 * count its negative eigenvalues. One object may factor many matrices of the same structure, one
 * after the other, without new arrays.
 *
 * <p>Multifrontal: small dense matrices are factored in the order of the elimination tree, each
 * handing what is left on to the next.
 *
 * <p>Reference: I. S. Duff and J. K. Reid, "The multifrontal solution of indefinite sparse
 * symmetric linear systems", ACM TOMS 9 (1983), pp. 302-325 (from memory). There is no pivoting:
 * pivots that vanish are counted, and replaced.
 */
public final class BlockFactor {

  private static final int SIX = BlockStructure.BLOCK;
  private static final int ENTRIES = BlockStructure.ENTRIES;

  private final BlockStructure structure;
  private final double[] lower;
  private final double[] pivots;
  private final double[] front;
  private final double[] stack;
  private final double[] work;
  private final double[] rowP;
  private final double[] rowQ;
  private int negatives;

  /** Makes room. */
  public BlockFactor(BlockStructure structure) {
    this.structure = structure;
    lower = new double[structure.factorEntries()];
    pivots = new double[structure.size()];
    int widest = SIX * structure.widest;
    front = new double[widest * widest];
    rowP = new double[widest];
    rowQ = new double[widest];
    stack = new double[structure.stack];
    work = new double[structure.size()];
  }

  /**
   * Factors a matrix.
   *
   * @param matrix not modified
   */
  public void factor(BlockMatrix matrix) {
    double[] values = matrix.values();
    int top = 0;
    negatives = 0;
    int fronts = structure.firsts.length - 1;
    for (int f = 0; f < fronts; f++) {
      int own = SIX * (structure.firsts[f + 1] - structure.firsts[f]);
      int width = own + SIX * structure.below[f].length;
      Arrays.fill(front, 0, width * width, 0);
      gather(f, width, values);
      top = takeFromChildren(f, width, top);
      eliminate(own, width, SIX * structure.firsts[f]);
      keep(f, own, width);
      int rest = width - own;
      for (int i = 0; i < rest; i++) {
        System.arraycopy(front, (own + i) * width + own + i, stack, top + i * rest + i, rest - i);
      }
      top += rest * rest;
    }
    for (double pivot : pivots) {
      if (pivot < 0) {
        negatives++;
      }
    }
  }

  private void gather(int f, int width, double[] values) {
    int first = structure.firsts[f];
    for (int p = first; p < structure.firsts[f + 1]; p++) {
      int row = SIX * (p - first);
      for (int b = structure.starts[p]; b < structure.starts[p + 1]; b++) {
        int column = SIX * structure.inFront[b];
        int from = b * ENTRIES;
        for (int i = 0; i < SIX; i++) {
          System.arraycopy(values, from + SIX * i, front, (row + i) * width + column, SIX);
        }
      }
    }
  }

  /** Children were worked on just before, the last of them last: their parts lie on top. */
  private int takeFromChildren(int f, int width, int top) {
    int left = top;
    for (int child = structure.lastChild(f); child >= 0; child = structure.childBefore(child)) {
      int[] places = structure.inParent[child];
      int size = SIX * places.length;
      left -= size * size;
      for (int a = 0; a < places.length; a++) {
        int row = SIX * places[a];
        for (int b = a; b < places.length; b++) {
          int column = SIX * places[b];
          for (int i = 0; i < SIX; i++) {
            int from = left + (SIX * a + i) * size + SIX * b;
            int to = (row + i) * width + column;
            int start = a == b ? i : 0;
            for (int j = start; j < SIX; j++) {
              front[to + j] += stack[from + j];
            }
          }
        }
      }
    }
    return left;
  }

  /** Takes two pivots at a time, so that the rest is walked through half as often. */
  private void eliminate(int own, int width, int firstPivot) {
    for (int p = 0; p < own; p += 2) {
      // Rows of their own, so that the innermost loop reads and writes different arrays.
      System.arraycopy(front, p * width + p, rowP, p, width - p);
      System.arraycopy(front, (p + 1) * width + p + 1, rowQ, p + 1, width - p - 1);
      double d = rowP[p];
      double inverse = d == 0 ? 0 : 1 / d;
      double l = rowP[p + 1] * inverse;
      for (int j = p + 1; j < width; j++) {
        rowQ[j] -= l * rowP[j];
      }
      System.arraycopy(rowQ, p + 1, front, (p + 1) * width + p + 1, width - p - 1);
      double e = rowQ[p + 1];
      double inverseE = e == 0 ? 0 : 1 / e;
      pivots[firstPivot + p] = d;
      pivots[firstPivot + p + 1] = e;
      for (int i = p + 2; i < width; i++) {
        double x = rowP[i] * inverse;
        double y = rowQ[i] * inverseE;
        if (x != 0 || y != 0) {
          subtract(i * width, i, width, x, y);
        }
      }
    }
  }

  private void subtract(int row, int from, int to, double x, double y) {
    double[] target = front;
    double[] a = rowP;
    double[] b = rowQ;
    for (int j = from; j < to; j++) {
      target[row + j] -= x * a[j] + y * b[j];
    }
  }

  private void keep(int f, int own, int width) {
    int at = structure.factorStarts[f];
    for (int p = 0; p < own; p++) {
      double d = front[p * width + p];
      double inverse = d == 0 ? 0 : 1 / d;
      for (int j = p + 1; j < width; j++) {
        lower[at + p * width + j] = front[p * width + j] * inverse;
      }
    }
  }

  /** How many eigenvalues of the matrix are negative (Sylvester's law of inertia). */
  public int negatives() {
    return negatives;
  }

  /** What is left of a freedom's own entry once all earlier freedoms are eliminated. */
  public double pivot(int node, int freedom) {
    return pivots[SIX * structure.place[node] + freedom];
  }

  /**
   * Solves.
   *
   * @param rightHandSide six per node, replaced by the solution
   */
  public void solve(double[] rightHandSide) {
    for (int p = 0; p < structure.nodes(); p++) {
      System.arraycopy(rightHandSide, SIX * structure.order[p], work, SIX * p, SIX);
    }
    int fronts = structure.firsts.length - 1;
    for (int f = 0; f < fronts; f++) {
      forward(f);
    }
    for (int i = 0; i < work.length; i++) {
      work[i] = pivots[i] == 0 ? 0 : work[i] / pivots[i];
    }
    for (int f = fronts - 1; f >= 0; f--) {
      backward(f);
    }
    for (int p = 0; p < structure.nodes(); p++) {
      System.arraycopy(work, SIX * p, rightHandSide, SIX * structure.order[p], SIX);
    }
  }

  private void forward(int f) {
    int first = SIX * structure.firsts[f];
    int own = SIX * structure.firsts[f + 1] - first;
    int[] rows = structure.below[f];
    int width = own + SIX * rows.length;
    for (int p = 0; p < own; p++) {
      double x = work[first + p];
      if (x == 0) {
        continue;
      }
      int at = structure.factorStarts[f] + p * width;
      for (int j = p + 1; j < own; j++) {
        work[first + j] -= x * lower[at + j];
      }
      at += own;
      for (int place : rows) {
        int to = SIX * place;
        for (int j = 0; j < SIX; j++) {
          work[to + j] -= x * lower[at + j];
        }
        at += SIX;
      }
    }
  }

  private void backward(int f) {
    int first = SIX * structure.firsts[f];
    int own = SIX * structure.firsts[f + 1] - first;
    int[] rows = structure.below[f];
    int width = own + SIX * rows.length;
    for (int p = own - 1; p >= 0; p--) {
      int at = structure.factorStarts[f] + p * width;
      double sum = work[first + p];
      for (int j = p + 1; j < own; j++) {
        sum -= lower[at + j] * work[first + j];
      }
      at += own;
      for (int place : rows) {
        int from = SIX * place;
        for (int j = 0; j < SIX; j++) {
          sum -= lower[at + j] * work[from + j];
        }
        at += SIX;
      }
      work[first + p] = sum;
    }
  }
}
