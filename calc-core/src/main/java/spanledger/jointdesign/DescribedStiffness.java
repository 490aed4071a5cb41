package spanledger.jointdesign;

import spanledger.joint.BracketJoint;
import spanledger.joint.stiffness.JointStiffness;

/**
 * How stiff a described joint is: its brackets side by side, the faces of each one behind the
 * other, by the springs by which the check shares its forces.
 */
public final class DescribedStiffness {

  private DescribedStiffness() {}

  /**
   * About the member end and along u, v, w, with all arms between faces and brackets.
   *
   * @throws IllegalArgumentException if a bolt lies where its leg cannot bend
   */
  public static JointStiffness of(BracketJoint joint) {
    return JointStiffness.of(new BracketSprings(joint).sharing(), JointStiffness.OTHER);
  }
}
