package spanledger.jointdesign;

import spanledger.envelope.Governing;
import spanledger.envelope.Instance;
import spanledger.joint.JointType;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointUse;

/**
 * The worst of one check of one face of a joint.
 *
 * <p>What says where and how much is at hand. {@link #run}, {@link #face} and {@link #check} work
 * the joint out in full at their first call and keep it; ask for them only where they are shown.
 */
public final class JointFinding {

  private final JointPlace end;
  private final JointType joint;
  private final JointUnderLoad loaded;
  private final CheckPlace place;
  private final Governing governing;

  JointFinding(
      JointPlace end,
      JointType joint,
      JointUnderLoad loaded,
      CheckPlace place,
      Governing governing) {
    this.end = end;
    this.joint = joint;
    this.loaded = loaded;
    this.place = place;
    this.governing = governing;
  }

  /** Where it is. */
  public JointPlace end() {
    return end;
  }

  /** Its joint or foot. */
  public JointType joint() {
    return joint;
  }

  /** The combination that governs, with the place of its moving load. */
  public Instance instance() {
    return loaded.instance();
  }

  /** The name of the face. */
  public String faceName() {
    return place.faceName();
  }

  /** What findings have in common of which the worst is kept. */
  String kind() {
    return place.kind();
  }

  /** The part that governs, for example {@code edge-north, start, post, bolt 2}. */
  public String part() {
    return place.part();
  }

  /** The step of the check that says how much is used. */
  public JointUse use() {
    return place.use();
  }

  /** The combination and the cut at the member end; its value is the use. */
  public Governing governing() {
    return governing;
  }

  /** Whether the check hangs on loads; distances of holes and tightening do not. */
  public boolean hangsOnLoads() {
    return place.hangsOnLoads();
  }

  /** The joint under the combination that governs; the same object for all findings there. */
  public JointRun run() {
    return loaded.run();
  }

  /** The face in that run. */
  public FaceRun face() {
    return run().faces().get(place.face());
  }

  /** The run of the check that governs. */
  public JointCheck check() {
    return face().checks().get(place.check());
  }
}
