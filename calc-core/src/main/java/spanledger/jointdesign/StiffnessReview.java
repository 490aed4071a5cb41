package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.joint.stiffness.AxisStiffness;
import spanledger.joint.stiffness.JointStiffness;
import spanledger.provenance.Source;

/**
 * Compares what the analysis takes of a member end in bending with what the parts of its described
 * joint give.
 */
final class StiffnessReview {

  /** By how much a spring may lie outside the bounds; common practice, no source. */
  static final double FACTOR = 2;

  /** Where the limits of rigid and pinned come from. */
  private static final Source CLASSES = Source.fromMemory("EN 1993-1-8:2005", "5.2.2.5(1)");

  /** Rigid from this part of EI/L on, in frames that sway. */
  private static final double RIGID = 25;

  /** Pinned up to this part of EI/L. */
  private static final double PINNED = 0.5;

  /** What may be done about it. */
  static final String REMEDY =
      "; forces may differ from those checked. Let the end take its stiffness \"fromJoint\", give"
          + " bounds from tests, or say under \"asAnalysed\" why it may stand";

  private static final double KNM = 1e6;

  private StiffnessReview() {}

  /**
   * What does not fit, in words; empty if all does.
   *
   * @param parts what the parts of its joint give, {@link DescribedStiffness}
   */
  static List<String> of(JointEnd end, JointStiffness parts) {
    Member member = end.member();
    MemberEnd taken = end.start() ? member.start() : member.end();
    double modulus = member.alloy().youngsModulus() / member.length();
    List<String> found = new ArrayList<>();
    compare(
            "y",
            taken.aboutY(),
            parts.about().get(1),
            modulus * member.section().properties().secondMomentY())
        .ifPresent(found::add);
    compare(
            "z",
            taken.aboutZ(),
            parts.about().get(2),
            modulus * member.section().properties().secondMomentZ())
        .ifPresent(found::add);
    return found;
  }

  private static Optional<String> compare(
      String axis, Restraint taken, Optional<AxisStiffness> parts, double perLength) {
    double lower = parts.map(AxisStiffness::lower).orElse(0.0);
    double upper = parts.map(AxisStiffness::upper).orElse(0.0);
    boolean fits;
    String words;
    if (taken instanceof Restraint.Fixed) {
      fits = lower >= RIGID * perLength;
      words = "rigid";
    } else if (taken instanceof Restraint.Free) {
      fits = upper <= PINNED * perLength;
      words = "pinned";
    } else {
      double stiffness = stiffness(taken);
      fits = stiffness >= lower / FACTOR && stiffness <= upper * FACTOR;
      words = moment(stiffness);
    }
    return fits
        ? Optional.empty()
        : Optional.of(
            "the analysis takes this end as "
                + words
                + " about "
                + axis
                + ", but its described parts give "
                + (upper > 0 ? moment(lower) + " to " + moment(upper) : "no hold")
                + limit(taken, perLength));
  }

  private static String limit(Restraint taken, double perLength) {
    if (taken instanceof Restraint.Fixed) {
      return " (rigid from " + moment(RIGID * perLength) + ", " + CLASSES.citation() + ")";
    }
    if (taken instanceof Restraint.Free) {
      return " (pinned up to " + moment(PINNED * perLength) + ", " + CLASSES.citation() + ")";
    }
    return " (a factor of " + Math.round(FACTOR) + " is let pass)";
  }

  private static double stiffness(Restraint taken) {
    if (taken instanceof Restraint.Spring spring) {
      return spring.stiffness();
    }
    if (taken instanceof Restraint.Play play) {
      return play.stiffness();
    }
    return ((Restraint.OneWay) taken).stiffness();
  }

  private static String moment(double stiffness) {
    return String.format(Locale.ROOT, "%.3g kN·m/rad", stiffness / KNM);
  }
}
