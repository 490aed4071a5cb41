package spanledger.sparse;

import java.util.Arrays;

/**
 * The lasting part of a symmetric matrix of six by six blocks, one row of blocks per node: which
 * blocks it has, the order of elimination, and how the factor is put together. Immutable; many
 * matrices and factors may share it.
 */
public final class BlockStructure {

  /** Freedoms per node. */
  public static final int BLOCK = 6;

  /** Entries per block. */
  static final int ENTRIES = BLOCK * BLOCK;

  /** Blocks of zeros that a place may gain by being worked on together with the next one. */
  private static final int SPARE = 1;

  final int[] order;
  final int[] place;

  /** Per place: where its blocks begin; its own block first, then those with later places. */
  final int[] starts;

  /** Per block: the place of its column. */
  final int[] columns;

  /** Per front: its first place; one more at the end. */
  final int[] firsts;

  /** Per front: the later places that it touches, rising. */
  final int[][] below;

  /** Per front: the front that takes what this one hands on, or -1. */
  final int[] parent;

  /** Per front: where its rows begin in the factor; one more at the end. */
  final int[] factorStarts;

  /** Per front: the places of its rows of {@link #below} in the front of its parent, in blocks. */
  final int[][] inParent;

  /** Per block: the place of its column in the front of its row, in blocks. */
  final int[] inFront;

  private final int[] lastChild;
  private final int[] childBefore;
  final int widest;
  final int stack;

  /**
   * Orders and prepares.
   *
   * @param neighbours of each node, itself left out, without doubles; not modified
   */
  public BlockStructure(int[][] neighbours) {
    Elimination elimination = new Elimination(neighbours);
    order = elimination.order;
    place = elimination.place;
    int count = order.length;
    starts = new int[count + 1];
    int blocks = count;
    for (int[] list : neighbours) {
      blocks += list.length;
    }
    columns = new int[count + (blocks - count) / 2];
    listBlocks(neighbours);
    firsts = fronts(elimination);
    int fronts = firsts.length - 1;
    below = new int[fronts][];
    parent = new int[fronts];
    factorStarts = new int[fronts + 1];
    int[] frontOf = new int[count];
    int most = 0;
    for (int f = 0; f < fronts; f++) {
      below[f] = elimination.below[firsts[f + 1] - 1];
      int own = firsts[f + 1] - firsts[f];
      Arrays.fill(frontOf, firsts[f], firsts[f + 1], f);
      int width = own + below[f].length;
      most = Math.max(most, width);
      factorStarts[f + 1] = factorStarts[f] + BLOCK * own * BLOCK * width;
    }
    widest = most;
    inParent = new int[fronts][];
    inFront = new int[columns.length];
    int[] local = new int[count];
    int deepest = 0;
    int filled = 0;
    lastChild = new int[fronts];
    childBefore = new int[fronts];
    Arrays.fill(lastChild, -1);
    for (int f = 0; f < fronts; f++) {
      parent[f] = below[f].length == 0 ? -1 : frontOf[below[f][0]];
      if (parent[f] >= 0) {
        childBefore[f] = lastChild[parent[f]];
        lastChild[parent[f]] = f;
      }
    }
    for (int f = 0; f < fronts; f++) {
      number(f, local);
      for (int b = starts[firsts[f]]; b < starts[firsts[f + 1]]; b++) {
        inFront[b] = local[columns[b]];
      }
    }
    for (int f = 0; f < fronts; f++) {
      if (parent[f] >= 0) {
        number(parent[f], local);
        inParent[f] = Arrays.stream(below[f]).map(p -> local[p]).toArray();
      } else {
        inParent[f] = new int[0];
      }
    }
    for (int f = 0; f < fronts; f++) {
      for (int child = lastChild[f]; child >= 0; child = childBefore[child]) {
        filled -= ENTRIES * below[child].length * below[child].length;
      }
      filled += ENTRIES * below[f].length * below[f].length;
      deepest = Math.max(deepest, filled);
    }
    stack = deepest;
  }

  /** The last of the fronts that hand on to this one, or -1. */
  int lastChild(int front) {
    return lastChild[front];
  }

  /** The front before this one that hands on to the same, or -1. */
  int childBefore(int front) {
    return childBefore[front];
  }

  private void number(int front, int[] local) {
    int at = 0;
    for (int p = firsts[front]; p < firsts[front + 1]; p++) {
      local[p] = at++;
    }
    for (int p : below[front]) {
      local[p] = at++;
    }
  }

  private void listBlocks(int[][] neighbours) {
    int filled = 0;
    for (int p = 0; p < order.length; p++) {
      starts[p] = filled;
      columns[filled++] = p;
      int from = filled;
      for (int neighbour : neighbours[order[p]]) {
        if (place[neighbour] > p) {
          columns[filled++] = place[neighbour];
        }
      }
      Arrays.sort(columns, from, filled);
    }
    starts[order.length] = filled;
  }

  /** Neighbouring places with (nearly) the same later places are worked on together. */
  private static int[] fronts(Elimination elimination) {
    int count = elimination.order.length;
    int[] firsts = new int[count + 1];
    int fronts = 0;
    int spare = 0;
    for (int p = 0; p < count; p++) {
      boolean joins = p > 0 && elimination.parent[p - 1] == p;
      int extra = joins ? elimination.below[p].length + 1 - elimination.below[p - 1].length : 0;
      spare += extra;
      if (!joins || spare > SPARE) {
        firsts[fronts++] = p;
        spare = 0;
      }
    }
    firsts[fronts] = count;
    return Arrays.copyOf(firsts, fronts + 1);
  }

  /** How many nodes. */
  public int nodes() {
    return order.length;
  }

  /** How many movements: six per node. */
  public int size() {
    return BLOCK * order.length;
  }

  /** Entries that the factor holds. */
  public int factorEntries() {
    return factorStarts[factorStarts.length - 1];
  }

  /** Whether the block of two nodes is stored with the first as its row. */
  public boolean isRow(int first, int second) {
    return place[first] <= place[second];
  }

  /**
   * Where the block of two nodes begins among the values of a matrix.
   *
   * @throws IllegalArgumentException if the nodes are not neighbours
   */
  public int blockOf(int first, int second) {
    int row = Math.min(place[first], place[second]);
    int column = Math.max(place[first], place[second]);
    int at =
        row == column
            ? starts[row]
            : Arrays.binarySearch(columns, starts[row] + 1, starts[row + 1], column);
    if (at < 0) {
      throw new IllegalArgumentException("Nodes " + first + " and " + second + " do not meet.");
    }
    return at * ENTRIES;
  }
}
