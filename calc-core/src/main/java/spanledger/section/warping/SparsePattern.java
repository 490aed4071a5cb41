package spanledger.section.warping;

import java.util.Arrays;
import org.ejml.data.DMatrixSparseCSC;
import spanledger.section.mesh.SectionMesh;

/** Which unknowns share a triangle, each list in rising order and without the unknown itself. */
final class SparsePattern {

  private final int[] start;
  private final int[] neighbours;

  private SparsePattern(int[] start, int[] neighbours) {
    this.start = start;
    this.neighbours = neighbours;
  }

  static SparsePattern of(SectionMesh mesh, Unknowns unknowns) {
    long[] pairs = new long[mesh.triangleCount() * 30];
    int count = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int i = 0; i < 6; i++) {
        int a = unknowns.of(mesh.node(t, i));
        for (int j = 0; j < 6; j++) {
          int b = unknowns.of(mesh.node(t, j));
          if (a >= 0 && b >= 0 && a != b) {
            pairs[count++] = (long) a << 32 | b;
          }
        }
      }
    }
    Arrays.sort(pairs, 0, count);
    int[] start = new int[unknowns.count() + 1];
    int[] neighbours = new int[count];
    int kept = 0;
    for (int i = 0; i < count; i++) {
      if (i == 0 || pairs[i] != pairs[i - 1]) {
        start[(int) (pairs[i] >> 32) + 1]++;
        neighbours[kept++] = (int) pairs[i];
      }
    }
    for (int i = 0; i < unknowns.count(); i++) {
      start[i + 1] += start[i];
    }
    return new SparsePattern(start, Arrays.copyOf(neighbours, kept));
  }

  int size() {
    return start.length - 1;
  }

  int degree(int unknown) {
    return start[unknown + 1] - start[unknown];
  }

  int neighbour(int unknown, int i) {
    return neighbours[start[unknown] + i];
  }

  /**
   * A zero matrix with an entry for every pair and for the diagonal, rows and columns renumbered.
   */
  DMatrixSparseCSC emptyMatrix(int[] rowOf) {
    int n = size();
    int[] unknownOf = new int[n];
    for (int u = 0; u < n; u++) {
      unknownOf[rowOf[u]] = u;
    }
    DMatrixSparseCSC matrix = new DMatrixSparseCSC(n, n, neighbours.length + n);
    int at = 0;
    for (int column = 0; column < n; column++) {
      int unknown = unknownOf[column];
      int first = at;
      matrix.nz_rows[at++] = column;
      for (int i = 0; i < degree(unknown); i++) {
        matrix.nz_rows[at++] = rowOf[neighbour(unknown, i)];
      }
      Arrays.sort(matrix.nz_rows, first, at);
      matrix.col_idx[column + 1] = at;
    }
    matrix.nz_length = at;
    matrix.indicesSorted = true;
    return matrix;
  }
}
