package spanledger.analysis;

import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixSparseCSC;

/**
 * Builds the stiffness of the frame: the upper triangle, column by column, in order of elimination.
 */
final class StiffnessAssembly {

  private final DMatrixSparseCSC upper;

  private StiffnessAssembly(NodeGraph graph, Equations equations) {
    this.upper = pattern(graph, equations);
  }

  /** Adds up segments, support springs and the holds of idle turns. */
  static DMatrixSparseCSC of(
      NodeGraph graph,
      Equations equations,
      List<SegmentModel> models,
      int[][] ends,
      Holds holds,
      List<IdleTurns.Hold> idle) {
    StiffnessAssembly assembly = new StiffnessAssembly(graph, equations);
    int[] places = new int[SegmentModel.ENDS];
    for (int s = 0; s < ends.length; s++) {
      SegmentModel model = models.get(s);
      for (int i = 0; i < 6; i++) {
        places[i] = equations.of(6 * ends[s][0] + i);
        places[6 + i] = equations.of(6 * ends[s][1] + i);
      }
      for (int i = 0; i < places.length; i++) {
        for (int j = 0; j < places.length; j++) {
          assembly.add(places[i], places[j], model.stiffness(i, j));
        }
      }
    }
    for (int e = 0; e < equations.count(); e++) {
      assembly.add(e, e, holds.spring(equations.freedom(e)));
    }
    for (IdleTurns.Hold hold : idle) {
      double[] axis = {hold.axis().x(), hold.axis().y(), hold.axis().z()};
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          assembly.add(
              equations.of(6 * hold.node() + 3 + i),
              equations.of(6 * hold.node() + 3 + j),
              hold.stiffness() * axis[i] * axis[j]);
        }
      }
    }
    return assembly.upper;
  }

  private void add(int row, int column, double value) {
    if (row == Equations.NONE || column == Equations.NONE || row > column) {
      return;
    }
    int at =
        Arrays.binarySearch(upper.nz_rows, upper.col_idx[column], upper.col_idx[column + 1], row);
    upper.nz_values[at] += value;
  }

  private static DMatrixSparseCSC pattern(NodeGraph graph, Equations equations) {
    int[] order = equations.order();
    int[] place = new int[order.length];
    for (int i = 0; i < order.length; i++) {
      place[order[i]] = i;
    }
    int count = equations.count();
    int[] starts = new int[count + 1];
    int[] rows = new int[64];
    int filled = 0;
    int column = 0;
    for (int node : order) {
      int[] before =
          Arrays.stream(graph.neighbours(node))
              .map(n -> place[n])
              .filter(p -> p < place[node])
              .sorted()
              .toArray();
      int firstOwn = column;
      for (int freedom = 6 * node; freedom < 6 * node + 6; freedom++) {
        if (equations.of(freedom) == Equations.NONE) {
          continue;
        }
        int needed = filled + 6 * before.length + 6;
        if (needed > rows.length) {
          rows = Arrays.copyOf(rows, 2 * needed);
        }
        for (int earlier : before) {
          for (int i = 6 * order[earlier]; i < 6 * order[earlier] + 6; i++) {
            if (equations.of(i) != Equations.NONE) {
              rows[filled++] = equations.of(i);
            }
          }
        }
        for (int own = firstOwn; own <= column; own++) {
          rows[filled++] = own;
        }
        starts[++column] = filled;
      }
    }
    DMatrixSparseCSC upper = new DMatrixSparseCSC(count, count, filled);
    upper.col_idx = starts;
    upper.nz_rows = Arrays.copyOf(rows, filled);
    upper.nz_values = new double[filled];
    upper.nz_length = filled;
    upper.indicesSorted = true;
    return upper;
  }
}
