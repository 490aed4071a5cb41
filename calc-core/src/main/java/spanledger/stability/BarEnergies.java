package spanledger.stability;

import spanledger.analysis.BeamColumnModel;
import spanledger.analysis.SegmentModel;
import spanledger.frame.Vector;

/**
 * How much each segment bends in a movement of the frame, and how much its axial force does.
 *
 * <p>With q = uᵀK(N)u = ∫EIw″² + N∫w′², the work of the force is N dq/dN (the shape is stationary),
 * and the energy of bending what is left. The derivative is taken by differences.
 */
final class BarEnergies {

  private static final int SIX = 6;
  private static final double STEP = 1e-4;

  private final FrameStiffness stiffness;
  private final double[] forces;
  private final double factor;
  private final double[] matrix = new double[SegmentModel.ENDS * SegmentModel.ENDS];
  private final double[] movement = new double[SegmentModel.ENDS];

  BarEnergies(FrameStiffness stiffness, double[] forces, double factor) {
    this.stiffness = stiffness;
    this.forces = forces;
    this.factor = factor;
  }

  /** Adds those of one movement, for bending about y and z. */
  void add(double[] shape, double[][] energies, double[][] works) {
    double[] whole = new double[SegmentModel.ENDS];
    for (int s = 0; s < stiffness.bars(); s++) {
      BeamColumnModel bar = stiffness.bar(s);
      stiffness.gather(shape, s, whole);
      double force = factor * forces[s];
      for (int axis = 0; axis < 2; axis++) {
        keep(whole, bar.model(), axis);
        double here = potential(bar, force);
        double work = 0;
        if (force != 0) {
          double step = Math.abs(force) * STEP;
          double slope = (potential(bar, force + step) - potential(bar, force - step)) / (2 * step);
          work = force * slope;
        }
        energies[s][axis] += here - work;
        works[s][axis] -= work;
      }
      bar.setForce(force);
    }
  }

  /** Keeps the part of a movement that bends about y (0) or z (1). */
  private void keep(double[] whole, SegmentModel model, int axis) {
    Vector shift = axis == 0 ? model.axisZ() : model.axisY();
    Vector turn = axis == 0 ? model.axisY() : model.axisZ();
    for (int end = 0; end < 2; end++) {
      project(whole, SIX * end, shift);
      project(whole, SIX * end + 3, turn);
    }
  }

  private void project(double[] whole, int at, Vector axis) {
    double along = whole[at] * axis.x() + whole[at + 1] * axis.y() + whole[at + 2] * axis.z();
    movement[at] = along * axis.x();
    movement[at + 1] = along * axis.y();
    movement[at + 2] = along * axis.z();
  }

  private double potential(BeamColumnModel bar, double force) {
    bar.setForce(force);
    bar.stiffness(matrix);
    double sum = 0;
    for (int i = 0; i < SegmentModel.ENDS; i++) {
      for (int j = 0; j < SegmentModel.ENDS; j++) {
        sum += movement[i] * matrix[i * SegmentModel.ENDS + j] * movement[j];
      }
    }
    return sum;
  }
}
