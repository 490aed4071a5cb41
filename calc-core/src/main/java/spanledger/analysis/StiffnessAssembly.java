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
      for (int column = 0; column < places.length; column++) {
        if (places[column] != Equations.NONE) {
          assembly.addColumn(places, 0, column, model);
          assembly.addColumn(places, 6, column, model);
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

  /** Adds the entries between the freedoms of one node, from {@code first} on, and a column. */
  private void addColumn(int[] places, int first, int column, SegmentModel model) {
    int to = places[column];
    // The rows of a node stand one after another in every column.
    int at = -1;
    for (int i = first; i < first + 6; i++) {
      int row = places[i];
      if (row == Equations.NONE || row > to) {
        continue;
      }
      at = at < 0 ? at(row, to) : at + 1;
      upper.nz_values[at] += model.stiffness(i, column);
    }
  }

  private int at(int row, int column) {
    return Arrays.binarySearch(
        upper.nz_rows, upper.col_idx[column], upper.col_idx[column + 1], row);
  }

  private void add(int row, int column, double value) {
    if (row == Equations.NONE || column == Equations.NONE || row > column) {
      return;
    }
    upper.nz_values[at(row, column)] += value;
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
      int[] before = placesBefore(place[node], graph.neighbours(node), place);
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

  /** Places of the nodes that are eliminated earlier, rising. */
  private static int[] placesBefore(int own, int[] nodes, int[] place) {
    int[] before = new int[nodes.length];
    int count = 0;
    for (int node : nodes) {
      if (place[node] < own) {
        before[count++] = place[node];
      }
    }
    Arrays.sort(before, 0, count);
    return Arrays.copyOf(before, count);
  }
}
