package spanledger.verification.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static spanledger.verification.joint.Parts.GIVEN;
import static spanledger.verification.joint.Parts.force;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.JointState;
import spanledger.resistance.joint.LipHold;

/**
 * The hinge length of a lip away from ends stands between the bounds of limit analysis: the elastic
 * plate, whose moments are in equilibrium and nowhere above those at the root, from below; the best
 * of a family of mechanisms, by work, from above.
 */
class LipBoundsTest {

  private static final JointCode CODE = Parts.codes().get(0);

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 2, 4, 8, 12, 16, 24, 32})
  void hingeLengthStandsBetweenItsBounds(double head) {
    LipHold lip = new LipHold("lip", Parts.metal(160, 195), 3, 6, 4, head, 500, 500, 2, GIVEN);
    double arm = 4;
    double length = CODE.lips(lip, JointState.ULTIMATE, force(1)).working().value("l_eff");
    double below = CODE.lips(lip, JointState.SERVICE, force(1)).working().value("l_el");
    assertThat(length).isBetween(below, mechanism(head, arm));
  }

  /**
   * Least work per hinge moment and turn of the mechanism: a middle piece turns about the root; to
   * each side a triangle of root line 2c, tip at the end of the head, and a triangle from there to
   * the free edge at k.
   */
  private static double mechanism(double head, double arm) {
    double least = Double.POSITIVE_INFINITY;
    for (double k = 0.05 * arm; k < 5 * arm; k += 0.01 * arm) {
      for (double c = 0; c < k; c += 0.01 * arm) {
        double lines = arm * arm + c * c + arm * arm + (k - c) * (k - c);
        least = Math.min(least, head + 2 * c + 2 * lines / k);
      }
    }
    return least;
  }
}
