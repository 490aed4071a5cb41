package spanledger.jointdesign;

import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import spanledger.envelope.Instance;

/**
 * A joint under one combination, worked out in full only when somebody asks, and kept from then on:
 * all who ask see the same runs. Hundreds of joints have thousands of these, of which few are
 * shown.
 */
final class JointUnderLoad {

  private final Instance instance;
  private final double[] forces;
  private final BiFunction<Instance, double[], JointRun> calculation;
  private @Nullable JointRun run;

  /**
   * @param forces N, V_y, V_z, T, M_y, M_z at the member end; not modified
   * @param calculation gives the same run for the same forces
   */
  JointUnderLoad(
      Instance instance, double[] forces, BiFunction<Instance, double[], JointRun> calculation) {
    this.instance = instance;
    this.forces = forces.clone();
    this.calculation = calculation;
  }

  Instance instance() {
    return instance;
  }

  synchronized JointRun run() {
    JointRun known = run;
    if (known == null) {
      known = calculation.apply(instance, forces);
      run = known;
    }
    return known;
  }
}
