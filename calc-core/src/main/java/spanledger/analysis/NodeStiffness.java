package spanledger.analysis;

import java.util.List;

/** What the segments at each node hold it with while all other nodes stay where they are. */
final class NodeStiffness {

  private final double[] shift;
  private final double[] turn;
  private final double[] turnBlock;
  private final double[] longest;

  NodeStiffness(List<SegmentModel> models, int[][] ends, int nodes) {
    shift = new double[nodes];
    turn = new double[nodes];
    turnBlock = new double[9 * nodes];
    longest = new double[nodes];
    for (int s = 0; s < ends.length; s++) {
      SegmentModel model = models.get(s);
      for (int end = 0; end < 2; end++) {
        int node = ends[s][end];
        longest[node] = Math.max(longest[node], model.length());
        for (int i = 0; i < 3; i++) {
          shift[node] += model.stiffness(6 * end + i, 6 * end + i);
          turn[node] += model.stiffness(6 * end + 3 + i, 6 * end + 3 + i);
          for (int j = 0; j < 3; j++) {
            turnBlock[9 * node + 3 * i + j] += model.stiffness(6 * end + 3 + i, 6 * end + 3 + j);
          }
        }
      }
    }
  }

  /** Stiffness against shifts, summed over three directions (alike for all axes), N/mm. */
  double shift(int node) {
    return shift[node];
  }

  /** Stiffness against turns, summed over three axes, N·mm. */
  double turn(int node) {
    return turn[node];
  }

  /** Entry of the 3 x 3 stiffness against turns, N·mm. */
  double turn(int node, int row, int column) {
    return turnBlock[9 * node + 3 * row + column];
  }

  /** The longest segment at the node, mm; 0 if there is none. */
  double longest(int node) {
    return longest[node];
  }

  /**
   * What the stiffness of a freedom compares with: the sum over the three of its kind at its node,
   * so that the direction of the axes does not matter.
   */
  double like(int freedom) {
    return freedom % 6 < 3 ? shift[freedom / 6] : turn[freedom / 6];
  }
}
