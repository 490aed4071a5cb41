package spanledger.analysis;

import java.util.Arrays;
import spanledger.frame.Frame;
import spanledger.frame.Segment;

/** Which nodes are joined by segments; neighbours are in rising order. */
final class NodeGraph {

  private final int[][] neighbours;

  private NodeGraph(int[][] neighbours) {
    this.neighbours = neighbours;
  }

  static NodeGraph of(Frame frame) {
    int count = frame.nodes().size();
    int[] degree = new int[count];
    int[] first = new int[frame.segments().size()];
    int[] second = new int[first.length];
    for (Segment segment : frame.segments()) {
      int i = segment.index();
      first[i] = frame.indexOf(segment.first());
      second[i] = frame.indexOf(segment.second());
      degree[first[i]]++;
      degree[second[i]]++;
    }
    int[][] lists = new int[count][];
    for (int node = 0; node < count; node++) {
      lists[node] = new int[degree[node]];
    }
    int[] filled = new int[count];
    for (int i = 0; i < first.length; i++) {
      lists[first[i]][filled[first[i]]++] = second[i];
      lists[second[i]][filled[second[i]]++] = first[i];
    }
    for (int node = 0; node < count; node++) {
      lists[node] = risingWithout(node, lists[node]);
    }
    return new NodeGraph(lists);
  }

  /** Each number once; the list is sorted in place. */
  private static int[] risingWithout(int node, int[] list) {
    Arrays.sort(list);
    int count = 0;
    for (int next : list) {
      if (next != node && (count == 0 || list[count - 1] != next)) {
        list[count++] = next;
      }
    }
    return Arrays.copyOf(list, count);
  }

  /** All lists of neighbours; not to be modified. */
  int[][] neighbours() {
    return neighbours;
  }

  int size() {
    return neighbours.length;
  }

  int[] neighbours(int node) {
    return neighbours[node];
  }
}
