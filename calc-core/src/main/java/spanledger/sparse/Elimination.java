package spanledger.sparse;

import java.util.Arrays;

/**
 * Which blocks a factor has: places of the nodes in order of elimination, and for each place the
 * later places that its elimination touches.
 *
 * <p>Places are in postorder of the elimination tree, so that what one front hands on is used by
 * the next ones first.
 *
 * <p>Reference: J. W. H. Liu, "The role of elimination trees in sparse factorization", SIAM J.
 * Matrix Anal. Appl. 11 (1990), pp. 134-172 (from memory).
 */
final class Elimination {

  private static final int NONE = -1;

  final int[] order;
  final int[] place;
  final int[][] below;
  final int[] parent;

  Elimination(int[][] neighbours) {
    int[] first = MinimumDegree.order(neighbours);
    int[] post = postorder(parents(neighbours, first));
    order = new int[first.length];
    for (int i = 0; i < order.length; i++) {
      order[i] = first[post[i]];
    }
    place = inverse(order);
    below = new int[order.length][];
    parent = new int[order.length];
    fill(neighbours);
  }

  static int[] inverse(int[] order) {
    int[] place = new int[order.length];
    for (int i = 0; i < order.length; i++) {
      place[order[i]] = i;
    }
    return place;
  }

  /** The parent of a place is the first later place that its elimination touches. */
  private static int[] parents(int[][] neighbours, int[] order) {
    int[] place = inverse(order);
    int[] parent = new int[order.length];
    int[] root = new int[order.length];
    for (int p = 0; p < order.length; p++) {
      parent[p] = NONE;
      root[p] = NONE;
      for (int neighbour : neighbours[order[p]]) {
        int at = place[neighbour];
        while (at < p && at != NONE) {
          int next = root[at];
          root[at] = p;
          if (next == NONE) {
            if (parent[at] == NONE) {
              parent[at] = p;
            }
            break;
          }
          at = next;
        }
      }
    }
    return parent;
  }

  private static int[] postorder(int[] parent) {
    int count = parent.length;
    int[] firstChild = new int[count];
    int[] sibling = new int[count];
    Arrays.fill(firstChild, NONE);
    int roots = NONE;
    for (int p = count - 1; p >= 0; p--) {
      if (parent[p] == NONE) {
        sibling[p] = roots;
        roots = p;
      } else {
        sibling[p] = firstChild[parent[p]];
        firstChild[parent[p]] = p;
      }
    }
    int[] post = new int[count];
    int done = 0;
    for (int root = roots; root != NONE; root = sibling[root]) {
      int at = root;
      while (at != NONE) {
        if (firstChild[at] != NONE) {
          int child = firstChild[at];
          firstChild[at] = NONE;
          at = child;
          continue;
        }
        post[done++] = at;
        if (at == root) {
          break;
        }
        at = sibling[at] != NONE ? sibling[at] : parent[at];
      }
    }
    return post;
  }

  private void fill(int[][] neighbours) {
    int count = order.length;
    int[] mark = new int[count];
    Arrays.fill(mark, NONE);
    int[] firstChild = new int[count];
    int[] sibling = new int[count];
    Arrays.fill(firstChild, NONE);
    int[] found = new int[count];
    for (int p = 0; p < count; p++) {
      int size = 0;
      mark[p] = p;
      for (int neighbour : neighbours[order[p]]) {
        int at = place[neighbour];
        if (at > p && mark[at] != p) {
          mark[at] = p;
          found[size++] = at;
        }
      }
      for (int child = firstChild[p]; child != NONE; child = sibling[child]) {
        for (int at : below[child]) {
          if (mark[at] != p) {
            mark[at] = p;
            found[size++] = at;
          }
        }
      }
      below[p] = Arrays.copyOf(found, size);
      Arrays.sort(below[p]);
      parent[p] = size == 0 ? NONE : below[p][0];
      if (size > 0) {
        sibling[p] = firstChild[parent[p]];
        firstChild[parent[p]] = p;
      }
    }
  }
}
