package spanledger.job;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.StiffnessBounds;
import spanledger.joint.BracketJoint;
import spanledger.jointdesign.JointEnd;
import spanledger.jointdesign.JointTests;
import spanledger.jointdesign.TestedEnd;
import spanledger.jointdesign.TestedEnd.Turn;

/**
 * What springs of member ends were worked out from, where the job does not type them.
 *
 * <p>The frame knows springs, not their origins; so a spring is known here by the very object, not
 * by its value. Two ends may have equal springs of different origins.
 */
public final class SpringOrigins {

  /** What a spring was worked out from. */
  public sealed interface Origin {

    /** Which bound of it was taken. */
    StiffnessBounds.Bound bound();
  }

  /**
   * Tests.
   *
   * @param tests the tests
   * @param bound which of their bounds was taken
   */
  public record OfTests(JointTests tests, StiffnessBounds.Bound bound) implements Origin {}

  /**
   * The parts of a described joint.
   *
   * @param joint the joint
   * @param bound which of their bounds was taken
   */
  public record OfParts(BracketJoint joint, StiffnessBounds.Bound bound) implements Origin {}

  private final IdentityHashMap<Restraint, Origin> origins = new IdentityHashMap<>();

  /** Keeps from where a spring is, and hands it back. */
  Restraint add(Restraint spring, Origin origin) {
    origins.put(spring, origin);
    return spring;
  }

  /** From where a spring is; empty where the job types it. */
  public Optional<Origin> of(Restraint spring) {
    return Optional.ofNullable(origins.get(spring));
  }

  /** The member ends that were tested. */
  List<TestedEnd> tested(Frame frame) {
    List<TestedEnd> ends = new ArrayList<>();
    for (Member member : frame.members()) {
      for (boolean start : new boolean[] {true, false}) {
        JointEnd end = new JointEnd(member, start);
        MemberEnd holds = start ? member.start() : member.end();
        add(end, Turn.TORSION, holds.torsion(), ends);
        add(end, Turn.ABOUT_Y, holds.aboutY(), ends);
        add(end, Turn.ABOUT_Z, holds.aboutZ(), ends);
      }
    }
    return ends;
  }

  private void add(JointEnd end, Turn turn, Restraint spring, List<TestedEnd> ends) {
    if (origins.get(spring) instanceof OfTests of) {
      ends.add(new TestedEnd(end, turn, of.tests()));
    }
  }
}
