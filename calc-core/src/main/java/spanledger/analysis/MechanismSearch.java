package spanledger.analysis;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.ejml.data.DMatrixSparseCSC;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Node;

/**
 * Finds how a frame without enough hold moves: the softest movement, by inverse iteration on a
 * slightly stiffened matrix.
 */
final class MechanismSearch {

  /** Stiffness added, per own stiffness of each freedom. */
  private static final double STIFFENING = 1e-9;

  /**
   * A turn counts with half the longest segment at its node as its arm: less than the shift it goes
   * with when something swings, so that the shift is named.
   */
  private static final double ARM = 0.5;

  private static final int ROUNDS = 30;

  private final Frame frame;
  private final Equations equations;
  private final NodeStiffness stiffness;
  private final List<SegmentModel> models;

  MechanismSearch(
      Frame frame, Equations equations, NodeStiffness stiffness, List<SegmentModel> models) {
    this.frame = frame;
    this.equations = equations;
    this.stiffness = stiffness;
    this.models = models;
  }

  /** Names the softest movement. */
  MechanismException find(DMatrixSparseCSC upper) {
    double[] own = new double[equations.count()];
    DMatrixSparseCSC stiffened = upper.copy();
    for (int e = 0; e < own.length; e++) {
      int diagonal = upper.col_idx[e + 1] - 1;
      own[e] = Math.max(upper.nz_values[diagonal], stiffness.like(equations.freedom(e)));
      stiffened.nz_values[diagonal] += STIFFENING * own[e];
    }
    Optional<Factorisation> factor = Factorisation.of(stiffened);
    if (factor.isEmpty()) {
      throw new IllegalStateException("A stiffened frame has no factor.");
    }
    return named(softest(factor.get(), own));
  }

  private boolean isShift(int equation) {
    return equations.freedom(equation) % 6 < 3;
  }

  private static double[] softest(Factorisation factor, double[] own) {
    // A fixed start, the same in every run, that favours no direction.
    Random start = new Random(1);
    double[] movement = new double[own.length];
    for (int e = 0; e < movement.length; e++) {
      movement[e] = (0.5 + start.nextDouble()) / Math.sqrt(own[e]);
    }
    for (int round = 0; round < ROUNDS; round++) {
      double norm = 0;
      for (int e = 0; e < movement.length; e++) {
        norm += own[e] * movement[e] * movement[e];
      }
      double scale = 1 / Math.sqrt(norm);
      for (int e = 0; e < movement.length; e++) {
        movement[e] *= own[e] * scale;
      }
      factor.solve(movement);
    }
    return movement;
  }

  private MechanismException named(double[] movement) {
    double greatest = 0;
    for (int e = 0; e < movement.length; e++) {
      greatest = Math.max(greatest, size(e, movement[e]));
    }
    // The first node in the frame's order among those that move alike.
    int chosen = Integer.MAX_VALUE;
    for (int e = 0; e < movement.length; e++) {
      if (size(e, movement[e]) > (1 - 1e-3) * greatest) {
        chosen = Math.min(chosen, equations.freedom(e));
      }
    }
    Node node = frame.nodes().get(chosen / 6);
    Freedom freedom = Freedom.values()[chosen % 6];
    double[] ofFrame = new double[6 * frame.nodes().size()];
    for (int e = 0; e < movement.length; e++) {
      ofFrame[equations.freedom(e)] = movement[e];
    }
    return new MechanismException(
        node, freedom, message(node, freedom) + FreeJoints.of(models, frame, ofFrame).words());
  }

  private double size(int equation, double movement) {
    double arm = isShift(equation) ? 1 : ARM * stiffness.longest(equations.freedom(equation) / 6);
    return Math.abs(movement) * arm;
  }

  private static String message(Node node, Freedom freedom) {
    String what = "Node " + node.name() + (freedom.isShift() ? " can move " : " can turn ");
    String mend =
        freedom.isShift()
            ? ": hold it with a support or a brace, or make a joint rigid."
            : ": hold it with a support, or make a member end there rigid about that axis.";
    return what + freedom.words() + mend;
  }
}
