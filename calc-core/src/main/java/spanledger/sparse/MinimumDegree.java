package spanledger.sparse;

import java.util.Arrays;
import java.util.TreeSet;

/**
 * An order of elimination that keeps the factor sparse: always the node with the fewest neighbours
 * in what is left, the lowest number first.
 *
 * <p>Eliminated nodes live on as cliques ("elements"), so nothing fills in while ordering.
 *
 * <p>Reference: A. George and J. W. H. Liu, "The evolution of the minimum degree ordering
 * algorithm", SIAM Review 31 (1989), pp. 1-19 (from memory).
 */
public final class MinimumDegree {

  private final int[][] nodes;
  private final int[][] cliques;
  private final int[][] members;
  private final boolean[] done;
  private final int[] mark;
  private final int[] degree;
  private int stamp;

  private MinimumDegree(int[][] neighbours) {
    int count = neighbours.length;
    nodes = new int[count][];
    cliques = new int[count][];
    members = new int[count][];
    done = new boolean[count];
    mark = new int[count];
    degree = new int[count];
    for (int node = 0; node < count; node++) {
      nodes[node] = neighbours[node].clone();
      cliques[node] = new int[0];
      members[node] = new int[0];
      degree[node] = nodes[node].length;
    }
  }

  /**
   * The nodes in order of elimination.
   *
   * @param neighbours of each node, itself left out; not modified
   */
  public static int[] order(int[][] neighbours) {
    return new MinimumDegree(neighbours).order();
  }

  private int[] order() {
    record Candidate(int degree, int node) implements Comparable<Candidate> {
      @Override
      public int compareTo(Candidate other) {
        int byDegree = Integer.compare(degree, other.degree);
        return byDegree != 0 ? byDegree : Integer.compare(node, other.node);
      }
    }
    TreeSet<Candidate> waiting = new TreeSet<>();
    for (int node = 0; node < degree.length; node++) {
      waiting.add(new Candidate(degree[node], node));
    }
    int[] order = new int[degree.length];
    for (int place = 0; place < order.length; place++) {
      Candidate next = waiting.first();
      waiting.remove(next);
      order[place] = next.node;
      eliminate(next.node);
      for (int touched : members[next.node]) {
        waiting.remove(new Candidate(degree[touched], touched));
        degree[touched] = reach(touched).length;
        waiting.add(new Candidate(degree[touched], touched));
      }
    }
    return order;
  }

  /** Makes the node's remaining neighbours a clique that takes in the cliques it was part of. */
  private void eliminate(int node) {
    int[] clique = reach(node);
    done[node] = true;
    int[] absorbed = cliques[node];
    members[node] = clique;
    // One mark serves both: living nodes are never numbers of cliques.
    stamp++;
    mark[node] = stamp;
    for (int inClique : clique) {
      mark[inClique] = stamp;
    }
    for (int old : absorbed) {
      mark[old] = stamp;
    }
    for (int neighbour : clique) {
      nodes[neighbour] = unmarked(nodes[neighbour], 0);
      int[] kept = unmarked(cliques[neighbour], 1);
      kept[kept.length - 1] = node;
      cliques[neighbour] = kept;
    }
    for (int old : absorbed) {
      members[old] = new int[0];
    }
  }

  /** Those without the current stamp, and free places behind them. */
  private int[] unmarked(int[] list, int free) {
    int[] kept = new int[list.length];
    int count = 0;
    for (int one : list) {
      if (mark[one] != stamp) {
        kept[count++] = one;
      }
    }
    return Arrays.copyOf(kept, count + free);
  }

  /** The nodes not yet eliminated that the node is joined to, directly or through cliques. */
  private int[] reach(int node) {
    stamp++;
    mark[node] = stamp;
    int[] found = new int[16];
    int count = 0;
    for (int neighbour : nodes[node]) {
      if (!done[neighbour] && mark[neighbour] != stamp) {
        mark[neighbour] = stamp;
        found = grown(found, count);
        found[count++] = neighbour;
      }
    }
    for (int clique : cliques[node]) {
      for (int member : members[clique]) {
        if (!done[member] && mark[member] != stamp) {
          mark[member] = stamp;
          found = grown(found, count);
          found[count++] = member;
        }
      }
    }
    return Arrays.copyOf(found, count);
  }

  private static int[] grown(int[] list, int needed) {
    return needed < list.length ? list : Arrays.copyOf(list, 2 * list.length);
  }
}
