package spanledger.vibration;

import java.util.ArrayList;
import java.util.List;
import spanledger.action.LoadAxes;
import spanledger.action.NodalLoad;
import spanledger.action.SegmentLoad;
import spanledger.analysis.SegmentMass;
import spanledger.analysis.SegmentModel;
import spanledger.frame.DividedFrame;
import spanledger.frame.Frame;
import spanledger.frame.Segment;
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
  private final List<LoadMass> loads = new ArrayList<>();
  private final double total;

  MassMatrix(FrameStiffness stiffness, DividedFrame divided, Frame whole, Masses masses) {
    this.stiffness = stiffness;
    ofPieces = new double[stiffness.bars()];
    onNodes = new double[stiffness.frame().nodes().size()];
    for (Masses.Part part : masses.parts()) {
      for (NodalLoad load : part.loads().nodalLoads()) {
        LoadMass.OnNode mass = LoadMass.OnNode.of(part, load);
        if (mass.mass() > 0) {
          loads.add(mass);
          onNodes[whole.indexOf(load.node())] += mass.mass();
        }
      }
      for (SegmentLoad load : part.loads().segmentLoads()) {
        if (load.axes() == LoadAxes.GLOBAL) {
          add(part, load, divided);
        }
      }
    }
    matrix = new BlockMatrix(stiffness.structure());
    double sum = 0;
    double[] own = new double[SegmentModel.ENDS * SegmentModel.ENDS];
    for (int s = 0; s < ofPieces.length; s++) {
      if (ofPieces[s] > 0) {
        sum += ofPieces[s];
        mass(s).matrix(own);
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

  private SegmentMass mass(int piece) {
    return new SegmentMass(stiffness.bar(piece).model(), ofPieces[piece]);
  }

  private void add(Masses.Part part, SegmentLoad load, DividedFrame divided) {
    Segment first = divided.firstPiece(load.segment());
    double length = first.length();
    for (int i = 0; i < divided.pieces(); i++) {
      Segment piece = divided.frame().segments().get(first.index() + i);
      double from = i * length;
      double to = from + length;
      if (load instanceof SegmentLoad.Distributed spread) {
        LoadMass.Spread mass = LoadMass.Spread.of(part, spread, piece, from, to);
        if (mass.mass() > 0) {
          loads.add(mass);
          ofPieces[piece.index()] += mass.mass();
        }
      } else if (load instanceof SegmentLoad.Point point && stands(point, from, to, i, divided)) {
        LoadMass.Point mass = LoadMass.Point.of(part, point, piece, from, to);
        if (mass.first() + mass.second() > 0) {
          loads.add(mass);
          onNodes[stiffness.firstNode(piece.index())] += mass.first();
          onNodes[stiffness.secondNode(piece.index())] += mass.second();
        }
      }
    }
  }

  /** On the first piece that holds it; at the far end of the segment, on the last. */
  private static boolean stands(
      SegmentLoad.Point load, double from, double to, int piece, DividedFrame divided) {
    return load.at() >= from && (load.at() < to || piece + 1 == divided.pieces());
  }

  /** Held freedoms have no mass in it. */
  BlockMatrix matrix() {
    return matrix;
  }

  /** What the masses come from. */
  List<LoadMass> loads() {
    return loads;
  }

  /** kg. */
  double total() {
    return total;
  }

  /**
   * What {@link ModeFigures} takes of a mode.
   *
   * @param lambda its eigenvalue, N/(mm·kg)
   * @param shape six per node, not modified
   */
  double[] figures(double lambda, double[] shape) {
    double[] image = new double[shape.length];
    all.multiply(shape, image);
    double swing = 0;
    double[] moved = new double[3];
    for (int i = 0; i < shape.length; i++) {
      swing += shape[i] * image[i];
      if (i % SIX < 3) {
        moved[i % SIX] += image[i];
      }
    }
    double floors = 0;
    double everything = 0;
    double[] ends = new double[SegmentModel.ENDS];
    for (int s = 0; s < ofPieces.length; s++) {
      if (ofPieces[s] > 0) {
        stiffness.gather(shape, s, ends);
        double[] part = mass(s).swing(ends);
        floors += part[0];
        everything += part[1];
      }
    }
    return ModeFigures.of(
        lambda,
        // The solver gives an eigenvector: its quotient is λ.
        lambda * swing,
        lambda * swing,
        lambda * moved[0],
        lambda * moved[1],
        lambda * moved[2],
        total,
        floors,
        everything);
  }
}
