package spanledger.vibration;

import java.util.Arrays;
import spanledger.action.LoadAxes;
import spanledger.action.NodalLoad;
import spanledger.action.SegmentLoad;
import spanledger.analysis.BeamColumnModel;
import spanledger.analysis.SegmentModel;
import spanledger.frame.DividedFrame;
import spanledger.frame.Frame;
import spanledger.frame.MemberRole;
import spanledger.frame.Segment;
import spanledger.section.SectionProperties;
import spanledger.sparse.BlockMatrix;
import spanledger.stability.FrameStiffness;

/** The mass of a divided frame and of what it carries. */
final class MassMatrix {

  private static final int SIX = 6;

  private final FrameStiffness stiffness;
  private final BlockMatrix matrix;
  private final BlockMatrix all;
  private final double[] ofPieces;
  private final double[] onNodes;
  private final double total;

  MassMatrix(FrameStiffness stiffness, DividedFrame divided, Frame whole, Masses masses) {
    this.stiffness = stiffness;
    ofPieces = new double[stiffness.bars()];
    onNodes = new double[stiffness.frame().nodes().size()];
    for (Masses.Part part : masses.parts()) {
      for (NodalLoad load : part.loads().nodalLoads()) {
        onNodes[whole.indexOf(load.node())] += weight(-load.force().z(), part.share());
      }
      for (SegmentLoad load : part.loads().segmentLoads()) {
        if (load.axes() == LoadAxes.GLOBAL) {
          add(load, divided, -load.direction().z(), part.share());
        }
      }
    }
    matrix = new BlockMatrix(stiffness.structure());
    double sum = 0;
    double[] own = new double[SegmentModel.ENDS * SegmentModel.ENDS];
    for (int s = 0; s < ofPieces.length; s++) {
      if (ofPieces[s] > 0) {
        sum += ofPieces[s];
        Arrays.fill(own, 0);
        PieceMass.add(stiffness.bar(s), ofPieces[s], polar(stiffness.bar(s)), own);
        matrix.addPair(
            BlockMatrix.pair(
                stiffness.structure(), stiffness.firstNode(s), stiffness.secondNode(s)),
            own);
      }
    }
    for (int n = 0; n < onNodes.length; n++) {
      sum += onNodes[n];
      for (int i = 0; i < 3 && onNodes[n] > 0; i++) {
        matrix.addDiagonal(n, i, onNodes[n]);
      }
    }
    total = sum;
    if (!(total > 0)) {
      throw new IllegalArgumentException(
          "Nothing weighs down on the frame, so it has no frequencies. Give it a permanent load.");
    }
    all = new BlockMatrix(stiffness.structure());
    all.set(matrix);
    boolean[] held = new boolean[stiffness.size()];
    for (int i = 0; i < held.length; i++) {
      held[i] = stiffness.isFixed(i);
    }
    matrix.hold(held);
    for (int i = 0; i < held.length; i++) {
      if (held[i]) {
        matrix.addDiagonal(i / SIX, i % SIX, -1);
      }
    }
  }

  private static double weight(double downward, double share) {
    return Math.max(0, downward) * share / Masses.GRAVITY;
  }

  /** The member's own inertia about its axis; what lies on it is taken to have none. */
  private static double polar(BeamColumnModel bar) {
    Segment segment = bar.model().segment();
    SectionProperties section = segment.member().section().properties();
    return segment.member().alloy().density()
        * (section.secondMomentY() + section.secondMomentZ())
        * bar.model().length();
  }

  /** Spreads a load over the pieces: forces go to the nearest nodes by the lever rule. */
  private void add(SegmentLoad load, DividedFrame divided, double down, double share) {
    Segment first = divided.firstPiece(load.segment());
    double piece = first.length();
    for (int i = 0; i < divided.pieces(); i++) {
      int s = first.index() + i;
      double from = i * piece;
      double to = from + piece;
      if (load instanceof SegmentLoad.Point point) {
        boolean last = i + 1 == divided.pieces();
        if (point.at() >= from && (point.at() < to || last)) {
          double mass = weight(down * point.force(), share);
          double far = Math.min(1, (point.at() - from) / piece);
          onNodes[stiffness.firstNode(s)] += mass * (1 - far);
          onNodes[stiffness.secondNode(s)] += mass * far;
          return;
        }
      } else if (load instanceof SegmentLoad.Distributed spread) {
        double a = Math.max(from, spread.from());
        double b = Math.min(to, spread.to());
        if (b > a) {
          double mean = 0.5 * (intensity(spread, a) + intensity(spread, b));
          ofPieces[s] += weight(down * mean * (b - a), share);
        }
      }
    }
  }

  private static double intensity(SegmentLoad.Distributed load, double at) {
    double along = (at - load.from()) / (load.to() - load.from());
    return load.intensityFrom() + along * (load.intensityTo() - load.intensityFrom());
  }

  /** Held freedoms have no mass in it. */
  BlockMatrix matrix() {
    return matrix;
  }

  /** kg. */
  double total() {
    return total;
  }

  /** Effective modal masses along X, Y, Z per whole mass. */
  double[] effectiveShares(double[] shape) {
    double[] image = new double[shape.length];
    all.multiply(shape, image);
    double own = 0;
    for (int i = 0; i < shape.length; i++) {
      own += shape[i] * image[i];
    }
    double[] shares = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      double moved = 0;
      for (int n = 0; n < onNodes.length; n++) {
        moved += image[SIX * n + axis];
      }
      shares[axis] = moved * moved / (own * total);
    }
    return shares;
  }

  /** Kinetic energy of floor members moving up and down, per that of everything. */
  double floorShare(double[] shape) {
    double floors = 0;
    double everything = 0;
    for (int s = 0; s < ofPieces.length; s++) {
      boolean floor = stiffness.frame().segments().get(s).member().role() == MemberRole.FLOOR;
      for (int node : new int[] {stiffness.firstNode(s), stiffness.secondNode(s)}) {
        double up = shape[SIX * node + 2] * shape[SIX * node + 2];
        double level =
            shape[SIX * node] * shape[SIX * node] + shape[SIX * node + 1] * shape[SIX * node + 1];
        everything += ofPieces[s] * (up + level);
        floors += floor ? ofPieces[s] * up : 0;
      }
    }
    return everything > 0 ? floors / everything : 0;
  }
}
