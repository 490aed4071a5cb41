package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.frame.Member;
import spanledger.frame.Support;
import spanledger.joint.BracketJoint;
import spanledger.joint.JointType;
import spanledger.resistance.joint.JointCode;

/**
 * By which code joints are checked, and where they are.
 *
 * @param code the code
 * @param joints joints of member ends; the first that covers an end counts
 * @param feet feet of supports; the first that covers a support counts
 * @param contacts advice on their metals
 */
public record JointDesign(
    JointCode code, List<JointPlacing> joints, List<FootPlacing> feet, MetalContacts contacts) {

  public JointDesign {
    joints = List.copyOf(joints);
    feet = List.copyOf(feet);
  }

  /** All joints and feet, used or not. */
  List<JointType> types() {
    List<JointType> types = new ArrayList<>();
    joints.forEach(placing -> types.add(placing.joint()));
    feet.forEach(placing -> types.add(placing.foot()));
    return types;
  }

  /** Whether faces of some joint must hold by friction under loads of use. */
  public boolean isHeldInUse() {
    return joints.stream().anyMatch(placing -> JointCalculation.isHeldInUse(placing.joint()));
  }

  /**
   * The joint of a member end, if the job describes it.
   *
   * @param start whether the start, or else the end, is meant
   */
  public Optional<BracketJoint> joint(Member member, boolean start) {
    return placing(member, start).map(JointPlacing::joint);
  }

  /** Which entry covers a member end. */
  Optional<JointPlacing> placing(Member member, boolean start) {
    return joints.stream()
        .filter(placing -> placing.ends().has(start) && placing.members().picks(member))
        .findFirst();
  }

  /** The foot of a support, if the job describes it. */
  public Optional<FootPlacing> foot(Support support) {
    return feet.stream()
        .filter(placing -> placing.supports().picks(support.node().name()))
        .findFirst();
  }
}
