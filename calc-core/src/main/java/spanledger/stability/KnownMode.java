package spanledger.stability;

import spanledger.analysis.BeamColumnModel;
import spanledger.analysis.SegmentModel;
import spanledger.sparse.BlockMatrix;

/** A buckling mode found before, with what each segment's axial force adds to its energy. */
final class KnownMode {

  /** Share of the Euler load at which the change by axial force is measured. */
  private static final double SMALL = 1e-3;

  private final double[] shape;
  private final double energy;
  private final double[] perForce;

  KnownMode(FrameStiffness stiffness, BlockMatrix unloaded, double[] mode) {
    shape = mode.clone();
    double[] image = new double[shape.length];
    unloaded.multiply(shape, image);
    energy = CriticalLoad.dot(shape, image);
    perForce = new double[stiffness.bars()];
    double[] own = new double[SegmentModel.ENDS];
    double[] matrix = new double[SegmentModel.ENDS * SegmentModel.ENDS];
    for (int s = 0; s < perForce.length; s++) {
      BeamColumnModel bar = stiffness.bar(s);
      double force = bar.force();
      double length = bar.model().length();
      double step =
          SMALL
              * bar.model().stiffnessValue("E")
              / (length * length)
              * Math.min(bar.model().stiffnessValue("I_y"), bar.model().stiffnessValue("I_z"));
      stiffness.gather(shape, s, own);
      perForce[s] = (energy(bar, step, own, matrix) - energy(bar, -step, own, matrix)) / (2 * step);
      bar.setForce(force);
    }
  }

  private static double energy(BeamColumnModel bar, double force, double[] own, double[] matrix) {
    bar.setForce(force);
    bar.stiffness(matrix);
    double sum = 0;
    for (int i = 0; i < own.length; i++) {
      for (int j = 0; j < own.length; j++) {
        sum += own[i] * matrix[i * own.length + j] * own[j];
      }
    }
    return sum;
  }

  double[] shape() {
    return shape;
  }

  /** The factor on forces at which this shape has no energy, to first order; negative if none. */
  double factor(double[] forces) {
    double geometric = 0;
    for (int s = 0; s < perForce.length; s++) {
      geometric += perForce[s] * forces[s];
    }
    return geometric < 0 ? -energy / geometric : -1;
  }
}
