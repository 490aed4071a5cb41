package spanledger.verification.envelope;

import java.util.Arrays;
import spanledger.analysis.InternalForces;
import spanledger.analysis.SegmentEffect;
import spanledger.envelope.ForceExtreme;

/** Internal forces by their kind, and between which limits they were met. */
final class Force {

  private static final SegmentEffect[] KINDS = {
    SegmentEffect.AXIAL,
    SegmentEffect.SHEAR_Y,
    SegmentEffect.SHEAR_Z,
    SegmentEffect.TORQUE,
    SegmentEffect.MOMENT_Y,
    SegmentEffect.MOMENT_Z
  };

  private Force() {}

  static double of(SegmentEffect effect, InternalForces forces) {
    return switch (effect) {
      case AXIAL -> forces.axial();
      case SHEAR_Y -> forces.shearY();
      case SHEAR_Z -> forces.shearZ();
      case TORQUE -> forces.torque();
      case MOMENT_Y -> forces.momentY();
      case MOMENT_Z -> forces.momentZ();
      case DEFLECTION_Y, DEFLECTION_Z -> throw new IllegalArgumentException(effect.toString());
    };
  }

  /** The greatest and the least of each kind before anything was met. */
  static double[] nothing() {
    double[] none = new double[2 * KINDS.length];
    for (int i = 0; i < none.length; i++) {
      none[i] = i % 2 == 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    }
    return none;
  }

  static void widen(double[] met, InternalForces forces) {
    for (int k = 0; k < KINDS.length; k++) {
      double force = of(KINDS[k], forces);
      met[2 * k] = Math.max(met[2 * k], force);
      met[2 * k + 1] = Math.min(met[2 * k + 1], force);
    }
  }

  /** The place of an extreme among those of {@link #nothing}. */
  static int index(ForceExtreme extreme) {
    return 2 * Arrays.asList(KINDS).indexOf(extreme.effect()) + (extreme.greatest() ? 0 : 1);
  }
}
