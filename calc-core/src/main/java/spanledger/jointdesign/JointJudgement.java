package spanledger.jointdesign;

import java.util.List;
import java.util.Optional;
import spanledger.resistance.joint.ContactAdvice;
import spanledger.resistance.member.CodeFigures;

/**
 * What a code says of the joints of a frame.
 *
 * @param title the code, as people cite it
 * @param figures the figures of the code, as they were used; empty without a code
 * @param findings the worst of each check of each face of each joint
 * @param open checks of described joints that cannot be made
 * @param kept ends whose stiffness in the analysis stands on the word of the job
 * @param undescribed member ends that are joined to something, of which the job says nothing
 * @param anchors the greatest tension and the greatest shear of every anchor, foot by foot; first
 *     the tensions and then the shears of a foot, the greatest first
 * @param contacts advice on their metals, not a verdict
 * @param tested member ends whose joints are known by tests
 */
public record JointJudgement(
    String title,
    Optional<CodeFigures> figures,
    List<JointFinding> findings,
    List<OpenCheck> open,
    List<Kept> kept,
    List<JointEnd> undescribed,
    List<AnchorDemand> anchors,
    List<ContactAdvice> contacts,
    List<TestedEnd> tested) {

  public JointJudgement {
    findings = List.copyOf(findings);
    open = List.copyOf(open);
    kept = List.copyOf(kept);
    undescribed = List.copyOf(undescribed);
    anchors = List.copyOf(anchors);
    contacts = List.copyOf(contacts);
    tested = List.copyOf(tested);
  }

  /**
   * A check that cannot be made.
   *
   * @param subject the joint
   * @param what what stands in the way and what to add
   */
  public record OpenCheck(String subject, String what) {}

  /**
   * A stiffness of the analysis that the parts do not give, and why it stands.
   *
   * @param end the member end
   * @param what what the analysis takes and what the parts give
   * @param why the word of the job
   */
  public record Kept(JointEnd end, String what, KeptStiffness why) {}
}
