package spanledger.sparse;

import java.util.Arrays;

/** A symmetric matrix of six by six blocks. Mutable, so that one may be filled again and again. */
public final class BlockMatrix {

  private static final int SIX = BlockStructure.BLOCK;
  private static final int ENTRIES = BlockStructure.ENTRIES;

  private final BlockStructure structure;
  private final double[] values;

  /** A matrix of zeros. */
  public BlockMatrix(BlockStructure structure) {
    this.structure = structure;
    this.values = new double[ENTRIES * structure.columns.length];
  }

  /** What is shared with other matrices. */
  public BlockStructure structure() {
    return structure;
  }

  /** All blocks, 36 entries each, row by row; see {@link BlockStructure#blockOf}. */
  public double[] values() {
    return values;
  }

  /**
   * An entry, whichever of its two halves is stored.
   *
   * @throws IllegalArgumentException if the nodes are not neighbours
   */
  public double entry(int first, int freedom, int second, int otherFreedom) {
    int at = structure.blockOf(first, second);
    return structure.isRow(first, second)
        ? values[at + SIX * freedom + otherFreedom]
        : values[at + SIX * otherFreedom + freedom];
  }

  /** Sets everything to zero. */
  public void clear() {
    Arrays.fill(values, 0);
  }

  /** Makes this equal to another of the same structure. */
  public void set(BlockMatrix other) {
    System.arraycopy(other.values, 0, values, 0, values.length);
  }

  /** Adds a multiple of another of the same structure. */
  public void add(BlockMatrix other, double factor) {
    for (int i = 0; i < values.length; i++) {
      values[i] += factor * other.values[i];
    }
  }

  /** Where the four blocks of two nodes stand, found once. */
  public record Pair(int first, int second, int mutual, boolean straight) {}

  /** Finds the blocks of two different nodes. */
  public static Pair pair(BlockStructure structure, int first, int second) {
    return new Pair(
        structure.blockOf(first, first),
        structure.blockOf(second, second),
        structure.blockOf(first, second),
        structure.isRow(first, second));
  }

  /**
   * Adds the stiffness between two different nodes.
   *
   * @param own 12 x 12, row by row, symmetric, not modified
   */
  public void addPair(Pair pair, double[] own) {
    for (int i = 0; i < SIX; i++) {
      for (int j = 0; j < SIX; j++) {
        values[pair.first + SIX * i + j] += own[2 * SIX * i + j];
        values[pair.second + SIX * i + j] += own[2 * SIX * (SIX + i) + SIX + j];
        values[pair.mutual + SIX * i + j] +=
            pair.straight ? own[2 * SIX * i + SIX + j] : own[2 * SIX * j + SIX + i];
      }
    }
  }

  /** Adds to the diagonal entry of one freedom. */
  public void addDiagonal(int node, int freedom, double value) {
    values[structure.blockOf(node, node) + (SIX + 1) * freedom] += value;
  }

  /** Adds to an entry of a node's own block; to be called for both halves. */
  public void addOwn(int node, int row, int column, double value) {
    values[structure.blockOf(node, node) + SIX * row + column] += value;
  }

  /** The diagonal entry of one freedom. */
  public double diagonal(int node, int freedom) {
    return values[structure.blockOf(node, node) + (SIX + 1) * freedom];
  }

  /**
   * Takes freedoms out: their rows and columns become zero, their diagonals 1.
   *
   * @param held six per node, not modified
   */
  public void hold(boolean[] held) {
    for (int row = 0; row < structure.nodes(); row++) {
      int rowNode = SIX * structure.order[row];
      for (int b = structure.starts[row]; b < structure.starts[row + 1]; b++) {
        int columnNode = SIX * structure.order[structure.columns[b]];
        for (int i = 0; i < SIX; i++) {
          for (int j = 0; j < SIX; j++) {
            if (held[rowNode + i] || held[columnNode + j]) {
              values[b * ENTRIES + SIX * i + j] = rowNode + i == columnNode + j ? 1 : 0;
            }
          }
        }
      }
    }
  }

  /**
   * The product with a vector.
   *
   * @param vector six per node, not modified
   * @param into six per node, overwritten
   */
  public void multiply(double[] vector, double[] into) {
    Arrays.fill(into, 0, structure.size(), 0);
    for (int row = 0; row < structure.nodes(); row++) {
      int r = SIX * structure.order[row];
      int own = structure.starts[row];
      for (int b = own; b < structure.starts[row + 1]; b++) {
        int c = SIX * structure.order[structure.columns[b]];
        for (int i = 0; i < SIX; i++) {
          double sum = 0;
          int at = b * ENTRIES + SIX * i;
          for (int j = 0; j < SIX; j++) {
            sum += values[at + j] * vector[c + j];
          }
          into[r + i] += sum;
        }
        if (b > own) {
          for (int i = 0; i < SIX; i++) {
            double factor = vector[r + i];
            int at = b * ENTRIES + SIX * i;
            for (int j = 0; j < SIX; j++) {
              into[c + j] += factor * values[at + j];
            }
          }
        }
      }
    }
  }
}
