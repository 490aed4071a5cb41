package spanledger.state;

import spanledger.frame.Freedom;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.stability.FrameStiffness;

/** A hold whose stiffness changes in steps: where it is, how it resists, what it does now. */
abstract sealed class SteppedHold {

  /** Before anything is known: as if all play were taken up. */
  private static final int AT_FIRST = -1;

  private final HoldLaw law;
  private final Restraint restraint;
  private final int start;
  private int branch;

  private SteppedHold(Restraint restraint) {
    this.restraint = restraint;
    if (restraint instanceof Restraint.OneWay oneWay) {
      law = HoldLaw.of(oneWay);
      start = oneWay.against() == Restraint.Way.POSITIVE ? 1 : 0;
    } else {
      law = HoldLaw.of((Restraint.Play) restraint);
      start = AT_FIRST;
    }
    branch = start;
  }

  /** Puts it as it is at first. */
  final void reset() {
    branch = start;
  }

  final int branch() {
    return branch;
  }

  /** The condition, once known. */
  final Condition condition() {
    return branch == AT_FIRST ? Condition.ENGAGED : law.branch(branch).condition();
  }

  /** Its stiffness now. */
  final double holding() {
    if (branch == AT_FIRST) {
      return ((Restraint.Play) restraint).stiffness();
    }
    return law.branch(branch).stiffness();
  }

  /** The movement from which it resists now. */
  final double origin() {
    return branch == AT_FIRST ? 0 : law.branch(branch).origin();
  }

  /** The branch that its movement and force ask for. */
  final int wanted(double slackMovement, double slackForce) {
    if (branch == AT_FIRST) {
      return law.first(force(), slackForce);
    }
    return law.next(branch, movement(), force(), slackMovement, slackForce);
  }

  final void take(int other) {
    branch = other;
  }

  final HoldReport report() {
    return new HoldReport(
        where(), name(), condition(), movement(), force(), holding(), origin(), words(condition()));
  }

  /** Sets the frame's stiffness to what it does now. */
  abstract void apply(FrameStiffness stiffness);

  /** Reads movement and force from a solution. */
  abstract void read(FrameStiffness stiffness, double[] movements, double[] supportForces);

  abstract double movement();

  abstract double force();

  abstract HoldReport.Where where();

  abstract String name();

  abstract String words(Condition condition);

  /** One freedom of a support. */
  static final class AtSupport extends SteppedHold {
    private final Support support;
    private final Freedom freedom;
    private final int at;
    private double movement;
    private double force;

    AtSupport(Support support, Freedom freedom, int at) {
      super(support.restraint(freedom));
      this.support = support;
      this.freedom = freedom;
      this.at = at;
    }

    Support support() {
      return support;
    }

    int freedomIndex() {
      return at;
    }

    @Override
    void apply(FrameStiffness stiffness) {
      stiffness.setSupport(at, holding());
    }

    @Override
    void read(FrameStiffness stiffness, double[] movements, double[] supportForces) {
      movement = movements[at];
      // The support pushes against the movement.
      force = -supportForces[at];
    }

    @Override
    double movement() {
      return movement;
    }

    @Override
    double force() {
      return force;
    }

    @Override
    HoldReport.Where where() {
      return new HoldReport.Where.OfSupport(support.node(), freedom);
    }

    @Override
    String name() {
      return "support of node " + support.node().name() + " " + freedom.words();
    }

    @Override
    String words(Condition condition) {
      String node = support.node().name();
      if (condition == Condition.OPEN && freedom == Freedom.SHIFT_Z) {
        return "the foot at node " + node + " has lifted";
      }
      return "the support of node " + node + " " + freedom.words() + " is " + words0(condition);
    }
  }

  /** One turn of a member end. */
  static final class AtJoint extends SteppedHold {
    private final Segment segment;
    private final int joint;
    private double movement;
    private double force;

    AtJoint(Segment segment, int joint) {
      super(restraint(segment, joint));
      this.segment = segment;
      this.joint = joint;
    }

    static Restraint restraint(Segment segment, int joint) {
      MemberEnd end = joint < 2 ? segment.start() : segment.end();
      return joint % 2 == 0 ? end.aboutY() : end.aboutZ();
    }

    @Override
    void apply(FrameStiffness stiffness) {
      stiffness.bar(segment.index()).setJoint(joint, holding(), origin());
    }

    @Override
    void read(FrameStiffness stiffness, double[] movements, double[] supportForces) {
      movement = stiffness.bar(segment.index()).jointTurn(joint);
      force = stiffness.bar(segment.index()).jointMoment(joint);
    }

    @Override
    double movement() {
      return movement;
    }

    @Override
    double force() {
      return force;
    }

    @Override
    HoldReport.Where where() {
      return new HoldReport.Where.OfJoint(segment, joint);
    }

    @Override
    String name() {
      String node = joint < 2 ? segment.first().name() : segment.second().name();
      return "joint of member "
          + segment.name()
          + " at node "
          + node
          + " about "
          + (joint % 2 == 0 ? "y" : "z");
    }

    @Override
    String words(Condition condition) {
      return "the " + name() + " is " + words0(condition);
    }
  }

  /** A member end along its axis; with the bar itself and a spring at the other end in series. */
  static final class Along extends SteppedHold {
    private final Segment segment;
    private final double flexibility;
    private double movement;
    private double force;

    Along(Segment segment, Restraint restraint, Restraint other, double barStiffness) {
      super(restraint);
      this.segment = segment;
      double beside = other instanceof Restraint.Spring spring ? 1 / spring.stiffness() : 0;
      flexibility = 1 / barStiffness + beside;
    }

    @Override
    void apply(FrameStiffness stiffness) {
      double holding = holding() == 0 ? 0 : 1 / (flexibility + 1 / holding());
      stiffness.bar(segment.index()).setAxial(holding, origin());
    }

    @Override
    void read(FrameStiffness stiffness, double[] movements, double[] supportForces) {
      double[] own = new double[12];
      stiffness.gather(movements, segment.index(), own);
      force = stiffness.bar(segment.index()).forceOf(own);
      movement = stiffness.bar(segment.index()).stretch() - force * flexibility;
    }

    @Override
    double movement() {
      return movement;
    }

    @Override
    double force() {
      return force;
    }

    @Override
    HoldReport.Where where() {
      return new HoldReport.Where.OfAxis(segment);
    }

    @Override
    String name() {
      return "member " + segment.name() + " along its axis";
    }

    @Override
    String words(Condition condition) {
      if (condition == Condition.OPEN) {
        return "member " + segment.name() + (movement() < 0 ? " is slack" : " has parted");
      }
      return name() + " is " + words0(condition);
    }
  }

  private static String words0(Condition condition) {
    return switch (condition) {
      case BEARS -> "bearing";
      case OPEN -> "open";
      default -> condition.words();
    };
  }
}
