package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.frame.Member;
import spanledger.frame.Support;
import spanledger.joint.BasePlateFoot;
import spanledger.joint.BracketJoint;
import spanledger.joint.JointType;
import spanledger.overturning.PlateCorner;
import spanledger.resistance.joint.JointCode;

/**
 * By which code joints are checked, and where they are.
 *
 * @param code the code; none where the job only names tests
 * @param joints joints of member ends; the first that covers an end counts
 * @param feet feet of supports; the first that covers a support counts
 * @param contacts advice on their metals
 * @param tested member ends whose joints were tested
 */
public record JointDesign(
    Optional<JointCode> code,
    List<JointPlacing> joints,
    List<FootPlacing> feet,
    MetalContacts contacts,
    List<TestedEnd> tested) {

  public JointDesign {
    joints = List.copyOf(joints);
    feet = List.copyOf(feet);
    tested = List.copyOf(tested);
    if (code.isEmpty() && !(joints.isEmpty() && feet.isEmpty())) {
      throw new IllegalArgumentException("Joints described by parts need a code.");
    }
  }

  /** The same with tested member ends. */
  public JointDesign withTested(List<TestedEnd> ends) {
    return new JointDesign(code, joints, feet, contacts, ends);
  }

  /** The code of joints that are described by their parts. */
  JointCode codeOfParts() {
    return code.orElseThrow(() -> new IllegalStateException("No code checks these joints."));
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

  /** The corners of the base plates under some supports. */
  public List<PlateCorner> plateCorners(List<Support> supports) {
    List<PlateCorner> corners = new ArrayList<>();
    for (Support support : supports) {
      Optional<FootPlacing> placing = foot(support);
      if (placing.isPresent() && placing.get().foot() instanceof BasePlateFoot plate) {
        corners.addAll(
            PlateCorner.of(
                support.node(),
                plate.lengthX(),
                plate.lengthY(),
                plate.offset(),
                placing.get().lie()));
      }
    }
    return corners;
  }

  /** The foot of a support, if the job describes it. */
  public Optional<FootPlacing> foot(Support support) {
    return feet.stream()
        .filter(placing -> placing.supports().picks(support.node().name()))
        .findFirst();
  }
}
