package spanledger.section.warping;

import java.util.Arrays;

/**
 * Numbers unknowns so that neighbours stay close together: walls of a section are long and thin,
 * and numbered along their length they give a narrow band.
 *
 * <p>Reverse Cuthill–McKee. Reference: A. George and J. W. H. Liu, Computer Solution of Large
 * Sparse Positive Definite Systems, 1981.
 */
final class BandOrder {

  private final SparsePattern pattern;
  private final int free;
  private final int[] order;
  private final boolean[] seen;

  private BandOrder(SparsePattern pattern, int free) {
    this.pattern = pattern;
    this.free = free;
    order = new int[free];
    seen = new boolean[free];
  }

  /**
   * The row of each unknown.
   *
   * @param tied how many of the last unknowns touch much of the mesh; they keep their places at the
   *     end
   */
  static int[] of(SparsePattern pattern, int tied) {
    BandOrder band = new BandOrder(pattern, pattern.size() - tied);
    int[] rowOf = new int[pattern.size()];
    Arrays.setAll(rowOf, u -> u);
    int count = 0;
    for (int u = 0; u < band.free; u++) {
      if (!band.seen[u]) {
        int end = band.walk(band.farEnd(u, count), count);
        count = end;
      }
    }
    for (int i = 0; i < count; i++) {
      rowOf[band.order[i]] = count - 1 - i;
    }
    return rowOf;
  }

  /** An unknown at one end of the connected part: the last reached from the last reached. */
  private int farEnd(int start, int count) {
    int from = start;
    for (int i = 0; i < 3; i++) {
      int end = walk(from, count);
      from = order[end - 1];
      for (int k = count; k < end; k++) {
        seen[order[k]] = false;
      }
    }
    return from;
  }

  /**
   * Breadth first from the start, neighbours of few neighbours first; returns the next free place.
   */
  private int walk(int start, int count) {
    int end = count;
    order[end++] = start;
    seen[start] = true;
    long[] next = new long[64];
    for (int at = count; at < end; at++) {
      int unknown = order[at];
      int found = 0;
      for (int i = 0; i < pattern.degree(unknown); i++) {
        int neighbour = pattern.neighbour(unknown, i);
        if (neighbour < free && !seen[neighbour]) {
          seen[neighbour] = true;
          if (found == next.length) {
            next = Arrays.copyOf(next, 2 * found);
          }
          next[found++] = (long) pattern.degree(neighbour) << 32 | neighbour;
        }
      }
      Arrays.sort(next, 0, found);
      for (int i = 0; i < found; i++) {
        order[end++] = (int) next[i];
      }
    }
    return end;
  }
}
