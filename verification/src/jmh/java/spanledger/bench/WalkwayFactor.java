package spanledger.bench;

import java.io.IOException;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import spanledger.sparse.BlockFactor;
import spanledger.sparse.BlockMatrix;
import spanledger.sparse.BlockStructure;
import spanledger.stability.FrameStiffness;

/**
 * Writes the stiffness of a walkway for {@code verification/native/cholesky.sh}, and times its own
 * factor and solve: processor time of the thread, best of 20 after warming up.
 */
public final class WalkwayFactor {

  private WalkwayFactor() {}

  /** Arguments: bays, file to write. */
  public static void main(String[] given) throws IOException {
    FrameStiffness stiffness = new FrameStiffness(new Walkway(Integer.parseInt(given[0])).frame());
    BlockMatrix matrix = new BlockMatrix(stiffness.structure());
    stiffness.assemble(new double[stiffness.bars()], 0, matrix);
    write(stiffness, matrix, Path.of(given[1]));
    double start = now();
    BlockFactor factor = new BlockFactor(stiffness.structure());
    double made = now();
    double factored = Double.POSITIVE_INFINITY;
    double solved = Double.POSITIVE_INFINITY;
    double[] right = new double[stiffness.size()];
    for (int round = 0; round < 40; round++) {
      Arrays.fill(right, 1);
      double before = now();
      factor.factor(matrix);
      double between = now();
      factor.solve(right);
      double after = now();
      if (round >= 20) {
        factored = Math.min(factored, between - before);
        solved = Math.min(solved, after - between);
      }
    }
    System.out.printf(
        Locale.ROOT,
        "own: n %d, room %.1f ms, best factor %.2f ms, best solve %.2f ms%n",
        stiffness.size(),
        made - start,
        factored,
        solved);
  }

  private static double now() {
    return 1e-6 * ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  /** The lower triangle, held freedoms left out. */
  private static void write(FrameStiffness stiffness, BlockMatrix matrix, Path file)
      throws IOException {
    int[] number = new int[stiffness.size()];
    int free = 0;
    for (int i = 0; i < number.length; i++) {
      number[i] = stiffness.isFixed(i) ? -1 : free++;
    }
    BlockStructure structure = stiffness.structure();
    StringBuilder lines = new StringBuilder();
    int entries = 0;
    for (int node = 0; node < structure.nodes(); node++) {
      entries += block(matrix, node, node, number, lines);
    }
    Set<Long> pairs = new HashSet<>();
    for (int s = 0; s < stiffness.bars(); s++) {
      int a = stiffness.firstNode(s);
      int b = stiffness.secondNode(s);
      if (pairs.add(((long) Math.min(a, b) << 32) + Math.max(a, b))) {
        entries += block(matrix, a, b, number, lines);
      }
    }
    try (PrintWriter out =
        new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.US_ASCII))) {
      out.println(free + " " + entries);
      out.print(lines);
    }
  }

  private static int block(
      BlockMatrix matrix, int first, int second, int[] number, StringBuilder lines) {
    int entries = 0;
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        int row = number[6 * first + i];
        int column = number[6 * second + j];
        if (row < 0 || column < 0 || (first == second && row < column)) {
          continue;
        }
        lines.append(Math.max(row, column)).append(' ').append(Math.min(row, column)).append(' ');
        lines.append(matrix.entry(first, i, second, j)).append('\n');
        entries++;
      }
    }
    return entries;
  }
}
